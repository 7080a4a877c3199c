import { describe, expect, it } from 'vitest'
import type { Edit } from '../../src/model/index.js'
import { over, sizesOf, type AskedLine } from './asked-size.js'

const line = (name: string, of?: string): AskedLine => ({
  topic: 'hot-water',
  name,
  ...(of === undefined ? {} : { of }),
})

describe('hot water of the clean house', () => {
  const ask = sizesOf('larkspur-lane', [])

  // Working by hand for an invented house: 45.6 gal from the tank, 112 gal/h from 70,000 Btu/h over 75 F; burns by the list of
  // Moritz and Henriques; germs by the usual bands.
  it.each([
    ['first ten minutes, mixed', 'T1', '64.3 gal'],
    ['first hour, mixed', 'T1', '157.6 gal'],
    ['whole day, mixed', 'T1', '2744 gal'],
    ['demand of one hour, at the mixed temperature', undefined, '65.7 gal'],
    ['left when all is drawn within an hour, mixed', 'T1', '92.3 gal'],
    ['smallest tank for all within ten minutes', 'T1', '46.3 gal'],
    ['time to a burn of an adult, water as mixed', 'MV1', '8 min'],
    ['time to a burn of a child, water as mixed', 'MV1', '2 min'],
    ['time to a burn of an adult, water as stored', 'T1', '3 s'],
    ['store above where germs stop growing', 'T1', '18 F'],
    ['time in which the store leaves a tenth of the germs', 'T1', '2 min'],
    ['water standing in the pipe', 'L-hot', '0.0755 gal'],
  ])('%s %s: %s', (name, of, expected) => {
    expect(over(ask(line(name, of)), expected)).toBeCloseTo(1, 1.7)
  })

  it('falls short in ten minutes, and says by how much', () => {
    const left = ask(line('left when all is drawn within ten minutes, mixed', 'T1'))
    expect(left.state === 'sized' ? left.value / 0.003785411784 : 0).toBeCloseTo(64.34 - 65.67, 1)
  })

  it('names what the coil lacks', () => {
    expect(ask(line('time to warm a cold tank by its coil', 'T1'))).toMatchObject({
      state: 'open',
      missing: [
        { subject: 'state hot water', fact: 'supply' },
        { subject: 'T1', fact: 'coilRatedEntering' },
        { subject: 'T1', fact: 'coilRatedTank' },
      ],
    })
  })
})

describe('the coil of a tank', () => {
  const rated: readonly Edit[] = [
    { set: 'T1.coilRatedEntering', to: '180 F' },
    { set: 'T1.coilRatedTank', to: '120 F' },
    { set: 'state hot water.supply', to: '180 F' },
  ]
  it('takes longer than the boiler alone', () => {
    const time = sizesOf('larkspur-lane', rated)(line('time to warm a cold tank by its coil', 'T1'))
    // 30.4 min by the boiler alone; the coil takes 120,000 Btu/h at 60 F above the tank and limits it from about 145 F on.
    expect(over(time, '30.4 min')).toBeGreaterThan(0.99)
    expect(over(time, '30.4 min')).toBeLessThan(1.1)
  })
})

describe('a circulation loop', () => {
  const loop: readonly Edit[] = [
    {
      set: 'none',
      to: ['waterHeater', 'condensatePump', 'gasConnector', 'emergencySwitch', 'hoseOutlet', 'recirculationPump'],
    },
    {
      insert: {
        id: 'RL1',
        kind: 'recirculationLoop',
        source: 'T1',
        returnsTo: 'tank',
        material: 'copper-M',
        size: '3/4',
        length: '190 ft',
        insulated: 'yes',
        insulationThickness: '1 in',
        flow: '1.12 gpm',
        returnTemperature: '118 F',
      },
    },
    { set: 'MV1.setTemperature', to: '122 F' },
  ]
  const ask = sizesOf('larkspur-lane', loop)

  // 5.64 Btu/h ft at 122 F in air of 70 F with 1 in of insulation and 1.65 Btu/h ft2 F at its surface, 190 ft of it.
  it.each([
    ['loss of a length of its return, in air of 70 F', '5.64 Btu/h ft'],
    ['loss of its return', '1072 Btu/h'],
    ['flow that lets the return cool by 5 F', '0.434 gpm'],
  ])('%s: %s', (name, expected) => {
    expect(Math.abs(over(ask(line(name, 'RL1')), expected) - 1)).toBeLessThan(0.03)
  })

  it('comes back by about the loss over the flow cooler', () => {
    // 1,072 Btu/h over 494 Btu/h gpm F times 1.12 gpm: 1.94 F.
    const back = ask(line('return at its flow', 'RL1'))
    expect(back.state === 'sized' ? back.value * 1.8 - 459.67 : 0).toBeCloseTo(122 - 1.94, 0)
  })

  it('tells how close the return is to where germs grow', () => {
    const above = ask(line('return above where germs stop growing', 'RL1'))
    expect(above.state === 'sized' ? above.value * 1.8 : 0).toBeCloseTo(-4, 6)
  })
})
