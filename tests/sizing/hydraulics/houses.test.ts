import { describe, expect, it } from 'vitest'
import { flowInGpm, headInFeet, solvedHouse, sumOf, velocityIn } from './solved-house.js'
import { pressureAlongLoop, separatorReturn, separatorSupply } from '../../../src/sizing/index.js'
import { si } from '../../../src/units/index.js'
import { numberOf } from '../number-of.js'
import { byHalving } from './nested-halving.js'
import { coopersStair, larkspurLane, type ScenarioHouse } from './scenario-houses.js'

const heating = ['Z1', 'Z2', 'Z3', 'Z4']
const heatingStair = ['Z1', 'Z2', 'Z3', 'Z4', 'Z5']

/** What the working of the two houses states: quantity, value found, value stated, share allowed, where it is stated. */
const stated: readonly (readonly [string, () => number, number, number, string])[] = [
  // Larkspur Lane
  ['total at a set 2.5 ft', () => sumOf(solvedHouse(larkspurLane, heating, 2.5), heating), 4.32, 0.02, 'working of D1'],
  ['Z1 at a set 2.5 ft', () => flowInGpm(solvedHouse(larkspurLane, heating, 2.5), 'Z1'), 1.58, 0.02, 'working of D1'],
  ['Z2 at a set 2.5 ft', () => flowInGpm(solvedHouse(larkspurLane, heating, 2.5), 'Z2'), 1.35, 0.02, 'working of D1'],
  ['Z3 at a set 2.5 ft', () => flowInGpm(solvedHouse(larkspurLane, heating, 2.5), 'Z3'), 1.0, 0.02, 'working of D1'],
  [
    'Z4 at a set 2.5 ft',
    () => flowInGpm(solvedHouse(larkspurLane, heating, 2.5), 'Z4'),
    0.415,
    0.1,
    'corrections 1, friction method',
  ],
  ['duty at 4.285 gpm', () => headInFeet(solvedHouse(larkspurLane, heating, 2.48)), 2.48, 0.05, 'results of D1'],
  ['flow at 2.48 ft', () => sumOf(solvedHouse(larkspurLane, heating, 2.48), heating), 4.285, 0.02, 'results of D1'],
  ['Z1 alone', () => flowInGpm(solvedHouse(larkspurLane, ['Z1'], 2.5), 'Z1'), 2.89, 0.02, 'results of D1'],
  ['Z4 alone', () => sumOf(solvedHouse(larkspurLane, ['Z4'], 2.5), ['Z4']), 0.93, 0.02, 'results of D1'],
  ['hot water, full speed', () => flowInGpm(solvedHouse(larkspurLane, ['tank']), 'tank'), 7.67, 0.02, 'corrections 1'],
  ['head of hot water', () => headInFeet(solvedHouse(larkspurLane, ['tank'])), 14.88, 0.05, 'corrections 1'],
  [
    'velocity in the common pipe',
    () => velocityIn(solvedHouse(larkspurLane, heating, 2.48), 'common'),
    1.05,
    0.02,
    'results of D1',
  ],
  ['velocity in Z1', () => velocityIn(solvedHouse(larkspurLane, heating, 2.48), 'Z1'), 0.39, 0.02, 'results of D1'],
  ['velocity in Z3', () => velocityIn(solvedHouse(larkspurLane, heating, 2.48), 'Z3'), 0.61, 0.02, 'results of D1'],
  // Cooper's Stair
  [
    'flow at 7.48 ft',
    () => sumOf(solvedHouse(coopersStair, heatingStair, 7.48), heatingStair),
    8.17,
    0.02,
    'corrections 2, D2 3',
  ],
  ['Z1 of the stair', () => flowInGpm(solvedHouse(coopersStair, heatingStair, 7.48), 'Z1'), 2.6, 0.02, 'flows of D2'],
  ['Z2 of the stair', () => flowInGpm(solvedHouse(coopersStair, heatingStair, 7.48), 'Z2'), 2.3, 0.02, 'flows of D2'],
  ['Z3 of the stair', () => flowInGpm(solvedHouse(coopersStair, heatingStair, 7.48), 'Z3'), 1.57, 0.02, 'flows of D2'],
  ['Z4 of the stair', () => flowInGpm(solvedHouse(coopersStair, heatingStair, 7.48), 'Z4'), 0.65, 0.02, 'flows of D2'],
  ['Z5 of the stair', () => flowInGpm(solvedHouse(coopersStair, heatingStair, 7.48), 'Z5'), 1.04, 0.02, 'flows of D2'],
  ['hot water of the stair', () => flowInGpm(solvedHouse(coopersStair, ['tank']), 'tank'), 9.83, 0.02, 'working of D2'],
  ['its head', () => headInFeet(solvedHouse(coopersStair, ['tank'])), 19.5, 0.05, 'working of D2'],
]

describe('the working of both houses', () => {
  it.each(stated)('%s', (_what, found, value, share, source) => {
    expect(Math.abs(found() / value - 1), `${found()} for ${value}, ${source}`).toBeLessThanOrEqual(share)
  })

  const states: readonly (readonly [string, ScenarioHouse, readonly string[], number | undefined])[] = [
    ['Larkspur Lane, all zones', larkspurLane, heating, 2.5],
    ['Larkspur Lane, one zone', larkspurLane, ['Z3'], 2.5],
    ['Larkspur Lane, full speed', larkspurLane, heating, undefined],
    ['Larkspur Lane, hot water', larkspurLane, ['tank'], undefined],
    ["Cooper's Stair, all zones", coopersStair, heatingStair, 7.5],
    ["Cooper's Stair, two zones at full speed", coopersStair, ['Z1', 'Z5'], undefined],
    ["Cooper's Stair, hot water", coopersStair, ['tank'], undefined],
  ]

  it.each(states)('%s comes out the same by nested halving in feet and gallons', (_name, house, open, setHead) => {
    const found = byHalving(house, open, setHead)
    const solution = solvedHouse(house, open, setHead)
    expect(sumOf(solution, open) / found.total).toBeCloseTo(1, 2)
    expect(headInFeet(solution) / found.head).toBeCloseTo(1, 2)
    for (const name of open) expect(sumOf(solution, [name]) / (found.flows.get(name) ?? NaN)).toBeCloseTo(1, 2)
  })
})

describe('pressure from the tank on', () => {
  const foot = si('length', '1 ft')
  const psi = si('pressure', '1 psi')
  // The tank hangs on the discharge: its pressure less what the pump makes is left at the inlet.
  const suction = (head: number, density: number): number => {
    const loop = pressureAlongLoop({
      pressure: 12 * psi,
      density,
      steps: [{ name: 'suction of C1', headChange: -head * foot, elevation: 0 }],
    })
    return loop.sized ? loop.lowest / psi : NaN
  }

  it.each([
    ['heating, working of D2', 7.48, 1030, 8.66],
    ['hot water, cold mixture, corrections 1', 19.5, 1030, 3.29],
    ['hot water, hot mixture, corrections 1', 19.5, 1000, 3.55],
  ])('%s', (_what, head, density, expected) => {
    expect(suction(head, density)).toBeCloseTo(expected, 1)
  })

  it('is lowest at the top of a house, or before the pump', () => {
    const loop = pressureAlongLoop({
      pressure: 12 * psi,
      density: 1030,
      steps: [
        { name: 'C1', headChange: 7.48 * foot, elevation: 0 },
        { name: 'top', headChange: -3 * foot, elevation: 33 * foot },
      ],
    })
    expect(loop.sized && loop.pressures.map((pressure) => Math.round((10 * pressure) / psi) / 10)).toEqual([15.3, -0.7])
    expect(loop.sized && loop.lowest / psi).toBeCloseTo(-0.7, 1)
  })
})

describe('a hydraulic separator', () => {
  const [boilerSupply, systemReturn] = [si('temperature', '160 F'), si('temperature', '130 F')]

  it('gives the boiler its own supply back where the boiler moves more, row 81 of the fault catalogue', () => {
    const mixed = numberOf(separatorReturn({ boilerFlow: 21.6, systemFlow: 12.4, boilerSupply, systemReturn }))
    expect(mixed).toBeCloseTo(si('temperature', '142.8 F'), 1)
  })

  it('mixes on one side only, and keeps the heat', () => {
    for (const [boilerFlow, systemFlow] of [
      [1, 2],
      [2, 1],
      [1, 1],
    ] as const) {
      const flows = { boilerFlow, systemFlow, boilerSupply, systemReturn }
      const [back, out] = [numberOf(separatorReturn(flows)), numberOf(separatorSupply(flows))]
      expect(boilerFlow * (boilerSupply - back)).toBeCloseTo(systemFlow * (out - systemReturn), 9)
      expect(back === systemReturn || out === boilerSupply).toBe(true)
    }
  })

  it('names a flow that cannot be', () => {
    const mixed = separatorSupply({ boilerFlow: 0, systemFlow: 1, boilerSupply, systemReturn })
    expect(!mixed.sized && mixed.why).toBe('The flow of the boiler cannot be 0: it is above zero.')
  })
})
