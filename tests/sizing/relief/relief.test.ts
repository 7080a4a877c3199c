import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  mostSecondSetting,
  mostWhileRelieving,
  reliefSteam,
  reliefSteamBySurface,
  smallestReliefInlet,
} from '../../../src/sizing/relief/index.js'
import { si } from '../../../src/units/index.js'
import { numberOf } from '../number-of.js'
import { whyOf } from '../why-of.js'

const psi = si('pressure', '1 psi')
const poundPerHour = si('mass', '1 lb') / 3600

describe('relief of a boiler', () => {
  // 12 NYCRR 4-5.3, read: 150 lb/h for 150,000 Btu/h.
  it('150,000 Btu/h: 150 lb/h', () =>
    expect(numberOf(reliefSteam(si('heatRate', '150000 Btu/h'))) / poundPerHour).toBeCloseTo(150, 9))

  // COMAR 09.12.01.11, read: 8 and 10 lb/h for a square foot.
  it.each([
    ['fire-tube', 160],
    ['water-tube', 200],
  ] as const)('20 ft2 of %s surface: %s lb/h', (tubes, expected) =>
    expect(numberOf(reliefSteamBySurface({ area: si('area', '20 ft2'), tubes })) / poundPerHour).toBeCloseTo(
      expected,
      9,
    ),
  )

  // 12 NYCRR 4-5.3, read: 36 psi and 55 psi.
  it.each([
    [30, 36],
    [50, 55],
  ])('a boiler of %s psi may reach %s psi while relieving', (mawp, expected) =>
    expect(numberOf(mostWhileRelieving(mawp * psi)) / psi).toBeCloseTo(expected, 9),
  )

  // COMAR 09.12.01.13 and NAC 455C.232, read: 56 psi and 110 psi.
  it.each([
    [50, 56],
    [100, 110],
  ])('a second valve on a boiler of %s psi: up to %s psi', (mawp, expected) =>
    expect(numberOf(mostSecondSetting(mawp * psi)) / psi).toBeCloseTo(expected, 9),
  )

  // NAC 455C.232, COMAR 09.12.01.13, read.
  it.each([
    ['80000 Btu/h', 0.75],
    ['15000 Btu/h', 0.5],
    ['15001 Btu/h', 0.75],
  ])('%s: inlet %s', (input, expected) => expect(numberOf(smallestReliefInlet(si('heatRate', input)))).toBe(expected))

  it('is zero at zero, doubles with the boiler, and stays above the allowable pressure', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e6, noNaN: true }), (amount) => {
        expect(numberOf(reliefSteam(0))).toBe(0)
        expect(numberOf(reliefSteam(2 * amount)) / numberOf(reliefSteam(amount))).toBeCloseTo(2, 9)
        expect(numberOf(mostWhileRelieving(amount))).toBeGreaterThan(amount)
        expect(numberOf(mostSecondSetting(amount))).toBeGreaterThan(amount)
      }),
    )
  })

  it.each([
    ['output of the boiler', reliefSteam(-1)],
    ['heating surface', reliefSteamBySurface({ area: NaN, tubes: 'fire-tube' })],
    ['maximum allowable working pressure', mostWhileRelieving(0)],
    ['maximum allowable working pressure', mostSecondSetting(-3)],
    ['heat input', smallestReliefInlet(-1)],
  ])('names the %s', (named, sizing) => expect(whyOf(sizing)).toContain(named))
})
