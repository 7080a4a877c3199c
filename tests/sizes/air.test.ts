import { describe, expect, it } from 'vitest'
import type { Edit } from '../../src/model/index.js'
import { over, sizesOf, type AskedLine } from './asked-size.js'

/** A chimney heater of 40,000 Btu/h beside the boiler, which pipes its own air. */
const heater: Edit = {
  insert: {
    id: 'WH9',
    kind: 'waterHeater',
    space: 'boiler-room',
    fuel: 'natural-gas',
    input: '40000 Btu/h',
    venting: 'draft-hood',
    draftHoodArea: '7.07 in2',
  },
}
const counted: readonly Edit[] = [
  { set: 'none', to: ['condensatePump', 'gasConnector', 'hoseOutlet', 'recirculationPump', 'recirculationLoop'] },
  { set: 'complete.waterHeater', to: 1 },
  heater,
  { set: 'building.airChanges', to: '0.35' },
  { set: 'boiler-room.volume', to: '1800 ft3' },
]

const line = (name: string, of = 'boiler-room'): AskedLine => ({ topic: 'vent', name, of })

describe('air for a burner that takes it from the room', () => {
  const ask = sizesOf('larkspur-lane', counted)

  // Fuel gas code 304.5.1, 304.5.2, 304.5.3 (read), 304.6 and 304.9 (recalled), for 40,000 Btu/h.
  it.each([
    ['air about the burners, standard method', '2000 ft3'],
    ['air about the burners by the measured air changes', '2400 ft3'],
    ['heat input that the room has air for', '36000 Btu/h'],
    ['each of two openings outdoors, through the wall or by vertical ducts', '10 in2'],
    ['each of two openings outdoors by horizontal ducts', '20 in2'],
    ['single opening outdoors', '13.333 in2'],
    ['each of two openings to a room on the same story', '100 in2'],
    ['openings to a room on another story together', '80 in2'],
    ['air for a fan to bring', '14 cfm'],
  ])('%s: %s', (name, expected) => {
    expect(over(ask(line(name)), expected)).toBeCloseTo(1, 3)
  })

  it('asks nothing of a room with sealed burners only', () => {
    expect(() => sizesOf('larkspur-lane', [])(line('air about the burners, standard method'))).toThrow('no line')
  })

  it('names what is missing', () => {
    const open = sizesOf('larkspur-lane', [...counted, { forget: 'building.airChanges' }, { forget: 'WH9.input' }])
    expect(open(line('air about the burners by the measured air changes'))).toMatchObject({
      state: 'open',
      missing: [
        { subject: 'WH9', fact: 'input' },
        { subject: 'building', fact: 'airChanges' },
      ],
    })
    const unsure = sizesOf('larkspur-lane', [...counted, { forget: 'WH9.venting' }])
    expect(unsure(line('air about the burners, standard method'))).toMatchObject({
      state: 'open',
      missing: [{ subject: 'WH9', fact: 'venting' }],
    })
  })

  it('counts what a louver leaves free', () => {
    const louvered = sizesOf('larkspur-lane', [
      ...counted,
      {
        insert: { id: 'CA1', kind: 'combustionAirOpening', space: 'boiler-room', grossArea: '40 in2', louver: 'wood' },
      },
    ])
    expect(over(louvered(line('free area of the opening', 'CA1')), '10 in2')).toBeCloseTo(1, 6)
  })
})
