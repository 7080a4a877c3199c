import { describe, expect, it } from 'vitest'
import { askFact, type Context, gatherFacts } from '../../src/facts/index.js'
import { hydraulicsOf } from '../../src/checks/index.js'
import { readInstallation, readShelf } from '../../src/model/index.js'
import { applyEdits, type Edit } from '../../src/model/index.js'
import { si } from '../../src/units/index.js'
import { openEquipment, openSeed } from '../houses/open-house.js'
import { catalogue, model } from './asking.js'

type House = 'larkspur-lane' | 'coopers-stair'

const shelf = readShelf(openEquipment(), model)

function strictOf(house: House, edits: readonly Edit[] = []) {
  const edited = applyEdits(openSeed(house), edits, model)
  if (!edited.ok) throw new Error(edited.problems.map(({ message }) => message).join(' '))
  const document = { ...edited.document, installation: 1 } as unknown
  return gatherFacts(readInstallation(document, model, shelf), catalogue).strict
}

function ask(house: House, [id, fact]: readonly [string, string], edits: readonly Edit[] = []) {
  const view = strictOf(house, edits)
  const thing = view.installation.things.get(id)
  if (thing === undefined) throw new Error(`the house has no ${id}`)
  return askFact(catalogue, view, thing, fact)
}

function valueOf(house: House, asked: readonly [string, string], edits: readonly Edit[] = []): number {
  const answer = ask(house, asked, edits)
  if (answer.state !== 'number' || answer.low !== answer.high) throw new Error(JSON.stringify(answer))
  return answer.low
}

const gpm = si('volumeFlow', '1 gpm')
const psi = si('pressure', '1 psi')
const footASecond = si('velocity', '1 ft/s')

describe('what is drawn of both houses', () => {
  // Value, share allowed, where it is stated. The fluid is taken at its hottest mean, the working of the papers at 140 F.
  it.each([
    ['larkspur-lane', ['B1', 'leastFlow'], gpm, [4.32, 0.02], 'operating points of D1'],
    ['larkspur-lane', ['L-supply', 'velocity'], footASecond, [1.88, 0.02], '7.67 gpm in 1-1/4 in, corrections 1'],
    ['larkspur-lane', ['L-coil', 'velocity'], footASecond, [2.82, 0.02], 'velocities of D1'],
    ['larkspur-lane', ['Z1', 'flowShare'], 1, [1, 0.03], 'flows of D1'],
    ['larkspur-lane', ['Z2', 'flowShare'], 1, [1.015, 0.03], 'flows of D1'],
    ['larkspur-lane', ['Z3', 'flowShare'], 1, [1.02, 0.03], 'flows of D1'],
    ['larkspur-lane', ['Z4', 'flowShare'], 1, [1, 0.1], 'flows of D1, friction method of corrections 1'],
    ['coopers-stair', ['B1', 'leastFlow'], gpm, [8.17, 0.02], 'corrections 2, D2 3'],
    ['coopers-stair', ['Z5', 'flowShare'], 1, [1, 0.03], 'corrections 2, D2 3'],
    // The tank joins behind the air separator, which takes some of the head before it: a little more is left.
    ['coopers-stair', ['C1', 'suctionPressure'], psi, [3.5, 0.2], 'corrections 1, pump suction'],
  ] as const)('%s %s', (house, asked, unit, [expected, share], source) => {
    const found = valueOf(house, asked) / unit
    expect(Math.abs(found / expected - 1), `${found} for ${expected}, ${source}`).toBeLessThanOrEqual(share)
  })

  it('has less flow the lower the pump is set, and more rise', () => {
    const low: readonly Edit[] = [{ set: 'C1.setHead', to: '1 ft' }]
    expect(valueOf('larkspur-lane', ['B1', 'leastFlow'], low)).toBeLessThan(
      valueOf('larkspur-lane', ['B1', 'leastFlow']),
    )
    expect(valueOf('larkspur-lane', ['B1', 'greatestRise'], low)).toBeGreaterThan(
      valueOf('larkspur-lane', ['B1', 'greatestRise']),
    )
  })
})

describe('what is not known leaves the flow open and is named', () => {
  it.each([
    ['B1.resistance.head', 'B1.resistance.head'],
    ['C1.mode', 'C1.mode'],
    ['C1.checkBuiltIn', 'C1.checkBuiltIn'],
    ['ZV2.flowCoefficient', 'ZV2.flowCoefficient'],
    ['T1.coilHead', 'T1.coilHead'],
    ['L-z3.pipe.equivalentLength', 'L-z3.pipe.equivalentLength'],
    ['heatingFluid.highestMean', 'heatingFluid.highestMean'],
    ['heatingFluid.antifreeze', 'heatingFluid.antifreeze'],
  ])('%s', (address, missing) => {
    const answer = ask('larkspur-lane', ['B1', 'leastFlow'], [{ forget: address }])
    expect(answer.state).toBe('unknown')
    expect(answer.missing.map(({ subject, fact }) => `${subject}.${fact}`)).toContain(missing)
  })

  it('so does a line that is not drawn', () => {
    expect(ask('larkspur-lane', ['B1', 'leastFlow'], [{ forget: 'L-z3' }]).state).toBe('unknown')
  })

  it('what hangs on a dead end is not asked for', () => {
    const edits: readonly Edit[] = [{ forget: 'L-tank.pipe.size' }, { forget: 'L-gauge.pipe.length' }]
    expect(valueOf('larkspur-lane', ['B1', 'leastFlow'], edits) / gpm).toBeCloseTo(4.34, 1)
  })
})

describe('hydraulicsOf', () => {
  it('solves each state once for one look, with its working', () => {
    const view = strictOf('larkspur-lane')
    const network = view.network()
    const asked: string[] = []
    const context = {
      installation: view.installation,
      network,
      ask: (fact: string, of: { id: string }) => {
        asked.push(fact)
        return askFact(catalogue, view, of as never, fact)
      },
      find: (id: string) => view.installation.things.get(id),
      listed: (kind: { name: string }) => ({ things: view.installation.ofKind.get(kind.name) ?? [], more: 0 }),
      parts: (name: string, of: { parts: Record<string, { ids: readonly string[] }> }) => ({
        things: (of.parts[name]?.ids ?? []).flatMap((id) => view.installation.things.get(id) ?? []),
        more: 0,
      }),
    } as unknown as Context
    const first = hydraulicsOf(context)
    const count = asked.length
    expect(hydraulicsOf(context)).toBe(first)
    expect(asked.length).toBe(count)
    expect(first.states.map(({ name, solved }) => [name, solved])).toEqual([
      ['heating', true],
      ['hot water', true],
    ])
    const [heating] = first.states
    expect(heating?.solved === true && heating.working.map(({ name }) => name)).toContain('flow through B1')
    expect(heating?.solved === true && heating.taken).toContain('valves for service stand open')
  })
})
