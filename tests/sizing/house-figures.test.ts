import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  columnPressure,
  equivalentVentLength,
  glycolDensity,
  transformerLoad,
  waterDensity,
} from '../../src/sizing/index.js'
import { printIn, si } from '../../src/units/index.js'

const psi = (pascal: number): number => pascal / si('pressure', '1 psi')
const filling = si('temperature', '50 F')
const column = (height: string, density: number): number =>
  psi(columnPressure({ height: si('length', height), density }).value)

describe('pressure of a column', () => {
  // 0.4335 psi per foot of water at 60 F, the trade's published conversion factor.
  it('one foot of water at 60 F', () => {
    expect(column('1 ft', waterDensity(si('temperature', '60 F')).value)).toBeCloseTo(0.4335, 3)
  })

  // 970.4 kg/m3 at 180 F, computed.
  it('one foot of water at 180 F', () => {
    expect(column('1 ft', waterDensity(si('temperature', '180 F')).value)).toBeCloseTo(0.4207, 3)
  })

  // First sample house, corrected figures; 4 psi on top is common practice.
  it('25.5 ft of cold water and 4 psi: 15.05 psi', () => {
    expect(column('25.5 ft', waterDensity(filling).value) + 4).toBeCloseTo(15.05, 2)
  })

  // Second sample house: 18.7 psi with a specific gravity of 1.03; Melinder gives 1.034 at 50 F.
  it('33 ft with 35 % propylene glycol and 4 psi: 18.7 psi', () => {
    const density = glycolDensity({ glycol: 'propylene-glycol', volumeFraction: 0.35, temperature: filling }).value
    expect(Math.abs(column('33 ft', density) + 4 - 18.7)).toBeLessThan(0.1)
    expect(column('33 ft', 1.03 * waterDensity(si('temperature', '60 F')).value) + 4).toBeCloseTo(18.7, 1)
  })

  it('shows its working and what it took for granted', () => {
    const { working, assumed, value } = columnPressure({ height: 10, density: 1000 })
    expect(value).toBeCloseTo(98_066.5, 6)
    expect(working.map(({ name, unit }) => `${name} ${unit}`)).toEqual([
      'height m',
      'density kg/m3',
      'pressure of the column Pa',
    ])
    expect(assumed).toEqual(['standard gravity, 9.80665 m/s2'])
  })
})

describe('equivalent vent length', () => {
  const feet = (straight: number, ninety: number, fortyFive: number): string =>
    printIn(
      equivalentVentLength({
        straight: straight * 0.3048,
        fittings: [
          { name: 'elbow90', count: ninety, each: 5 * 0.3048 },
          { name: 'elbow45', count: fortyFive, each: 3 * 0.3048 },
        ],
      }).value,
      'length',
      'ft',
      3,
    )

  // Corrected figures of the sample houses; 5 ft and 3 ft an elbow as in their tables.
  it.each([
    [38, 7, 2, '79 ft'],
    [38, 4, 0, '58 ft'],
    [19.5, 3, 2, '40.5 ft'],
    [17, 3, 0, '32 ft'],
  ])('%s ft with %s and %s elbows: %s', (straight, ninety, fortyFive, expected) => {
    expect(feet(straight, ninety, fortyFive)).toBe(expected)
  })

  it('none of unlimited length, and unlimited many of none, are nothing', () => {
    const fittings = [
      { name: 'elbow90', count: 0, each: Infinity },
      { name: 'elbow45', count: Infinity, each: 0 },
    ]
    expect(equivalentVentLength({ straight: 3, fittings })).toMatchObject({ value: 3, valid: true })
  })

  it('tells that a negative length is none', () => {
    expect(equivalentVentLength({ straight: -1, fittings: [] }).valid).toBe(false)
  })
})

describe('transformer load', () => {
  const draws = (power: number, ...ids: readonly string[]): { id: string; power: number }[] =>
    ids.map((id) => ({ id, power }))

  // Corrected figures of the sample houses: zone valves of 0.32 A at 24 V draw 7.68 VA.
  it('first house: 38.0 VA', () => {
    const load = transformerLoad({
      steady: draws(3, 'TH2', 'TH3', 'TH4', 'TH5', 'CP1'),
      switched: draws(7.68, 'ZV1', 'ZV2', 'ZV3', 'ZV4', 'ZV5'),
      states: [
        { name: 'heating', energized: ['ZV2', 'ZV3', 'ZV4'] },
        { name: 'hot water', energized: ['ZV1', 'ZV5'] },
      ],
    })
    expect(load.value).toBeCloseTo(38.04, 10)
    expect(load.working.at(-2)).toMatchObject({ name: 'together in heating', unit: 'VA' })
  })

  it('second house: 49.7 VA', () => {
    const load = transformerLoad({
      steady: [...draws(3, 'TH2', 'TH3', 'TH4', 'TH5', 'TH6'), ...draws(4, 'CP1')],
      switched: draws(7.68, 'ZV1', 'ZV2', 'ZV3', 'ZV4', 'ZV5', 'ZV6'),
      states: [
        { name: 'hot water', energized: ['ZV1', 'ZV6'] },
        { name: 'heating', energized: ['ZV2', 'ZV3', 'ZV4', 'ZV5'] },
      ],
    })
    expect(load.value).toBeCloseTo(49.72, 10)
  })

  // Sum of four valves of 6 VA, a relay of 4 VA and four thermostats of 1.5 VA, computed by hand.
  it('everything at once: 34 VA', () => {
    const switched = draws(6, 'ZV1', 'ZV2', 'ZV3', 'ZV4')
    const steady = [...draws(4, 'RE1'), ...draws(1.5, 'TH1', 'TH2', 'TH3', 'TH4')]
    const states = [{ name: 'all', energized: ['ZV1', 'ZV2', 'ZV3', 'ZV4'] }]
    expect(transformerLoad({ steady, switched, states }).value).toBe(34)
  })

  it('without states only what always draws', () => {
    expect(transformerLoad({ steady: draws(3, 'CP1'), switched: draws(6, 'ZV1'), states: [] }).value).toBe(3)
  })

  it('is never below a state, never above everything', () => {
    const power = fc.double({ min: 0, max: 50, noNaN: true })
    fc.assert(
      fc.property(
        fc.array(power, { minLength: 1, maxLength: 6 }),
        fc.array(fc.array(fc.nat({ max: 5 })), { minLength: 1, maxLength: 4 }),
        (powers, groups) => {
          const switched = powers.map((one, index) => ({ id: `ZV${index}`, power: one }))
          const states = groups.map((group, index) => ({
            name: `state ${index}`,
            energized: group.map((id) => `ZV${id}`),
          }))
          const most = transformerLoad({ steady: [], switched, states }).value
          for (const state of states)
            expect(most).toBeGreaterThanOrEqual(transformerLoad({ steady: [], switched, states: [state] }).value)
          expect(most).toBeLessThanOrEqual(powers.reduce((sum, one) => sum + one, 0) + 1e-9)
        },
      ),
    )
  })
})
