import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  airHeatCapacity,
  billConductance,
  crossCheck,
  energySignature,
  fuelOfYear,
  loadShare,
  loadSum,
  monthDegreeDays,
  monthMean,
  roomConductance,
  roomLoad,
  signatureLoad,
  weatherBins,
} from '../../../src/sizing/load/index.js'
import { normalShare } from '../../../src/sizing/load/normal-distribution.js'
import { tQuantile } from '../../../src/sizing/load/t-quantile.js'
import { numberOf } from '../number-of.js'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const surface = fc.record({
  name: fc.constant('wall'),
  area: number(0, 500),
  conductance: number(0, 6),
  toOutside: number(0, 1),
})
const room = fc.record({
  name: fc.constant('room'),
  surfaces: fc.array(surface, { maxLength: 5 }),
  slabEdges: fc.array(fc.record({ name: fc.constant('edge'), length: number(0, 50), conductance: number(0, 2) })),
  thermalBridges: number(0, 0.2),
  volume: number(0, 1000),
  airChange: number(0, 5e-4),
  airHeatCapacity: number(800, 1300),
})

describe('laws of loads', () => {
  it('a room without difference has no load, a colder day never less', () => {
    fc.assert(
      fc.property(room, number(240, 290), number(240, 290), (of, one, other) => {
        const at = (outdoor: number): number => numberOf(roomLoad(of, { indoor: 293, outdoor }))
        expect(at(293)).toBe(0)
        expect(at(Math.min(one, other))).toBeGreaterThanOrEqual(at(Math.max(one, other)))
        expect(at(one)).toBeGreaterThanOrEqual(0)
      }),
    )
  })

  it('surfaces add up', () => {
    fc.assert(
      fc.property(room, surface, (of, more) => {
        const with_ = numberOf(roomConductance({ ...of, surfaces: [...of.surfaces, more] }))
        const added = more.area * (more.conductance + of.thermalBridges) * more.toOutside
        expect(with_ - numberOf(roomConductance(of))).toBeCloseTo(added, 6)
      }),
    )
  })

  it('thin air carries less', () => {
    fc.assert(
      fc.property(number(0, 5000), number(0, 5000), (one, other) => {
        const at = (altitude: number): number => numberOf(airHeatCapacity({ altitude, temperature: 293 }))
        expect(at(Math.max(one, other))).toBeLessThanOrEqual(at(Math.min(one, other)))
      }),
    )
  })

  it('the band of a sum holds the sum and is no wider than all doubts together', () => {
    const part = fc.record({ name: fc.constant('room'), load: number(0, 1e4), spread: number(0, 1) })
    fc.assert(
      fc.property(fc.array(part, { maxLength: 8 }), (parts) => {
        const sum = loadSum(parts)
        if (!sum.banded) throw new Error(sum.why)
        const { low, likely, high } = sum.band
        const all = parts.reduce((total, { load, spread }) => total + load * spread, 0)
        expect(low).toBeLessThanOrEqual(likely)
        expect(high - likely).toBeLessThanOrEqual(all + 1e-6)
        expect(low).toBeGreaterThanOrEqual(-1e-6)
      }),
    )
  })

  it('the fuel of a year gives its conductance back as a bill', () => {
    fc.assert(
      fc.property(
        number(1, 1e5),
        number(10, 60),
        number(10, 6000),
        number(0.5, 1),
        (load, difference, days, efficiency) => {
          const year = { designLoad: load, difference, degreeDays: days, efficiency, correction: 1 }
          const bill = { energy: numberOf(fuelOfYear(year)), otherEnergy: 0, efficiency, degreeDays: days }
          expect((numberOf(billConductance(bill)) * difference) / load).toBeCloseTo(1, 9)
        },
      ),
    )
  })

  it('agreement is nothing for equals', () => {
    fc.assert(
      fc.property(number(1, 1e6), (one) => {
        expect(numberOf(crossCheck({ rooms: one, bills: one }))).toBe(0)
      }),
    )
  })

  it('a signature gives back the house it is made from, in any order', () => {
    fc.assert(
      fc.property(
        number(50, 1000),
        number(283, 295),
        fc.uniqueArray(fc.integer({ min: 245, max: 280 }), { minLength: 3, maxLength: 8 }),
        (conductance, balance, outdoors) => {
          const periods = outdoors.map((outdoor) => ({ outdoor, load: conductance * (balance - outdoor) }))
          const results = [energySignature(periods), energySignature(periods.toReversed())]
          for (const result of results) {
            if (!result.fitted) throw new Error(result.why)
            expect(result.signature.conductance / conductance).toBeCloseTo(1, 6)
            expect(result.signature.balance).toBeCloseTo(balance, 4)
            const load = signatureLoad(result.signature, 250)
            expect(load.low).toBeLessThanOrEqual(load.likely)
            expect(load.likely / (conductance * (balance - 250))).toBeCloseTo(1, 6)
          }
        },
      ),
    )
  })

  it('the load share is a share and falls as it gets milder', () => {
    fc.assert(
      fc.property(number(230, 310), number(230, 310), (one, other) => {
        const at = (outdoor: number): number => numberOf(loadShare({ designOutdoor: 255, balance: 290 }, outdoor))
        expect(at(Math.min(one, other))).toBeGreaterThanOrEqual(at(Math.max(one, other)))
        expect(at(one)).toBeGreaterThanOrEqual(0)
        expect(at(one)).toBeLessThanOrEqual(1)
      }),
    )
  })
})

describe('laws of weather', () => {
  it('mean and degree days of a month are each other backwards', () => {
    fc.assert(
      fc.property(number(250, 300), number(2, 8), (mean, spread) => {
        const month = { days: 30, spread, base: 291.45 }
        const degreeDays = numberOf(monthDegreeDays({ ...month, mean }))
        fc.pre(degreeDays > 0.01)
        expect(numberOf(monthMean({ ...month, degreeDays }))).toBeCloseTo(mean, 4)
      }),
    )
  })

  it('far below the base degree days are plain differences, and never below those', () => {
    fc.assert(
      fc.property(number(240, 300), number(1, 6), (mean, spread) => {
        const days = numberOf(monthDegreeDays({ days: 1, mean, spread, base: 291 }))
        expect(days).toBeGreaterThanOrEqual(Math.max(0, 291 - mean) - 1e-9)
        if (mean < 291 - 8 * spread) expect(days).toBeCloseTo(291 - mean, 6)
      }),
    )
  })

  it('bins hold all hours', () => {
    const month = fc.record({ days: number(1, 31), mean: number(250, 300), spread: number(1, 8), swing: number(0, 10) })
    fc.assert(
      fc.property(fc.array(month, { minLength: 1, maxLength: 12 }), number(0.5, 5), (months, width) => {
        const weather = weatherBins(months, width)
        if (!weather.binned) throw new Error(weather.why)
        const hours = weather.bins.reduce((sum, bin) => sum + bin.hours, 0)
        expect(hours / months.reduce((sum, { days }) => sum + days * 24, 0)).toBeCloseTo(1, 6)
        expect(weather.bins.every((bin) => bin.hours >= -1e-9)).toBe(true)
      }),
    )
  })

  // Points of the standard normal distribution from any table.
  it.each([
    [0, 0.5],
    [1, 0.8413447],
    [-1.959964, 0.025],
    [-2.999, 0.0013543],
    [-3.001, 0.0013455],
    [3.090232, 0.999],
    [-6, 9.8659e-10],
  ])('normal distribution below %s: %s', (z, share) => {
    expect(Math.abs(normalShare(z) / share - 1)).toBeLessThan(1e-4)
  })

  it('the quantile of Student falls towards 1.96', () => {
    const all = Array.from({ length: 200 }, (_, index) => tQuantile(index + 1))
    expect(all.every((each, at) => at === 0 || each <= all[at - 1]!)).toBe(true)
    expect(all.at(-1)).toBeGreaterThan(1.96)
    expect(all.at(-1)).toBeLessThan(1.98)
  })
})
