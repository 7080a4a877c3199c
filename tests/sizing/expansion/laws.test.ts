import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  airCushionTank,
  atmosphericPressure,
  diaphragmTank,
  enoughFor,
  fluidExpansion,
  hotPressure,
  liftTemperature,
  tankAcceptance,
  tankSpread,
  tankWithReserve,
} from '../../../src/sizing/expansion/index.js'
import { numberOf } from '../number-of.js'

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true })

const pressures = fc
  .record({ fill: between(3e4, 3e5), rise: between(1e4, 4e5), atmosphere: between(6e4, 1.05e5) })
  .map(({ fill, rise, atmosphere }) => ({ fill, highest: fill + rise, atmosphere }))
const expansion = between(1e-4, 0.1)
const warmth = between(275, 370)
const fluid = fc.constantFrom('water' as const, { glycol: 'propylene-glycol', volumeFraction: 0.3 } as const)

describe('laws of expansion tanks', () => {
  it('a tank takes up exactly what it was sized for, and the gauge then reads the highest pressure', () => {
    fc.assert(
      fc.property(pressures, expansion, (at, swelling) => {
        const diaphragm = numberOf(diaphragmTank({ expansion: swelling, ...at }))
        const cushion = numberOf(airCushionTank({ expansion: swelling, ...at }))
        for (const tank of [
          { volume: diaphragm, precharge: at.fill, ...at },
          { volume: cushion, precharge: 0, ...at },
        ]) {
          expect(numberOf(tankAcceptance(tank)) / swelling).toBeCloseTo(1, 6)
          expect(numberOf(hotPressure({ ...tank, expansion: swelling })) / at.highest).toBeCloseTo(1, 5)
        }
      }),
    )
  })

  it('a plain tank is never smaller than a diaphragm tank', () => {
    fc.assert(
      fc.property(pressures, expansion, (at, swelling) => {
        const [diaphragm, plain] = [diaphragmTank, airCushionTank].map((tank) =>
          numberOf(tank({ expansion: swelling, ...at })),
        )
        expect(plain! / diaphragm!).toBeGreaterThanOrEqual(1)
      }),
    )
  })

  it('doubles with the swelling; is zero at zero', () => {
    fc.assert(
      fc.property(pressures, expansion, (at, swelling) => {
        const size = (share: number): number => numberOf(diaphragmTank({ expansion: share * swelling, ...at }))
        expect(size(0)).toBe(0)
        expect(size(2) / size(1)).toBeCloseTo(2, 9)
      }),
    )
  })

  it('shrinks with a higher highest pressure, grows with a higher fill and with the air around', () => {
    fc.assert(
      fc.property(pressures, expansion, between(1, 1e4), (at, swelling, more) => {
        const size = (change: Partial<typeof at>): number =>
          numberOf(diaphragmTank({ expansion: swelling, ...at, ...change }))
        expect(size({ highest: at.highest + more })).toBeLessThanOrEqual(size({}))
        if (at.fill + more < at.highest) expect(size({ fill: at.fill + more })).toBeGreaterThanOrEqual(size({}))
        expect(size({ atmosphere: at.atmosphere + more })).toBeGreaterThanOrEqual(size({}))
      }),
    )
  })

  it('without a reserve the European form is the diaphragm tank', () => {
    fc.assert(
      fc.property(pressures, expansion, ({ fill, ...at }, swelling) => {
        const european = tankWithReserve({ expansion: swelling, reserve: 0, precharge: fill, ...at })
        expect(numberOf(european) / numberOf(diaphragmTank({ expansion: swelling, fill, ...at }))).toBeCloseTo(1, 9)
      }),
    )
  })

  it('a limit only takes away; a charge equal to the fill takes most', () => {
    fc.assert(
      fc.property(pressures, between(0.005, 0.2), between(0, 0.2), between(0, 4e5), (at, volume, limit, precharge) => {
        const tank = { volume, precharge, ...at }
        const free = numberOf(tankAcceptance(tank))
        expect(numberOf(tankAcceptance({ ...tank, limit }))).toBeLessThanOrEqual(free)
        expect(free).toBeLessThanOrEqual(numberOf(tankAcceptance({ ...tank, precharge: at.fill })) * (1 + 1e-12))
        expect(free).toBeGreaterThanOrEqual(0)
      }),
    )
  })

  it('a tank is just enough for its break-even system', () => {
    fc.assert(
      fc.property(pressures, between(0.005, 0.2), between(0.005, 0.06), (at, volume, swelling) => {
        const system = numberOf(enoughFor({ tank: { volume, precharge: at.fill, ...at }, swelling }))
        expect(numberOf(diaphragmTank({ expansion: system * swelling, ...at })) / volume).toBeCloseTo(1, 9)
      }),
    )
  })

  it('the spread encloses the likely tank', () => {
    fc.assert(
      fc.property(pressures, between(0.01, 2), between(0, 0.5), (at, systemVolume, spread) => {
        const tanks = tankSpread({ systemVolume, spread, swelling: 0.03, ...at })
        expect(numberOf(tanks.low)).toBeLessThanOrEqual(numberOf(tanks.likely))
        expect(numberOf(tanks.likely)).toBeLessThanOrEqual(numberOf(tanks.high))
      }),
    )
  })
})

describe('laws of swelling', () => {
  it('is zero without heating and chains: first to second, second to third', () => {
    fc.assert(
      fc.property(fluid, warmth, warmth, warmth, (filled, a, b, c) => {
        const swell = (cold: number, hot: number): number => 1 + numberOf(fluidExpansion({ fluid: filled, cold, hot }))
        expect(swell(a, a)).toBe(1)
        expect(swell(a, b) * swell(b, c)).toBeCloseTo(swell(a, c), 12)
      }),
    )
  })

  it('grows with the temperature above 5 C', () => {
    fc.assert(
      fc.property(fluid, between(279, 365), between(0.1, 8), (filled, hot, more) => {
        const swell = (to: number): number => numberOf(fluidExpansion({ fluid: filled, cold: 278.15, hot: to }))
        expect(swell(hot + more)).toBeGreaterThan(swell(hot))
      }),
    )
  })

  it('at the lift temperature the gauge reads the setting', () => {
    fc.assert(
      fc.property(pressures, fluid, between(0.005, 0.02), between(0.3, 0.6), (at, filled, volume, systemVolume) => {
        const tank = { volume, precharge: at.fill, ...at }
        const lift = liftTemperature({ systemVolume, fluid: filled, cold: 283.15, tank })
        const hot = numberOf(lift)
        const swelling = numberOf(fluidExpansion({ fluid: filled, cold: 283.15, hot }))
        const reading = hotPressure({ ...tank, expansion: systemVolume * swelling })
        if (lift.sized && lift.valid) expect(numberOf(reading) / at.highest).toBeCloseTo(1, 4)
        else expect(numberOf(reading)).toBeLessThanOrEqual(at.highest)
      }),
    )
  })

  it('air thins with altitude', () => {
    fc.assert(
      fc.property(between(-400, 9000), between(1, 1000), (altitude, more) => {
        expect(numberOf(atmosphericPressure(altitude + more))).toBeLessThan(numberOf(atmosphericPressure(altitude)))
      }),
    )
  })
})
