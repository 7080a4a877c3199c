import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  burnTime,
  coilConductance,
  coilHeatRate,
  coilReheatTime,
  deliverable,
  hotShare,
  hotWaterDemand,
  lowestReserve,
  mixedVolume,
  pipeHeatLoss,
  recirculationReturn,
  recovery,
  tankForDemand,
} from '../../../src/sizing/hot-water/index.js'
import { numberOf } from '../number-of.js'

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('laws of hot water', () => {
  it('mixed water keeps the heat of its parts', () => {
    fc.assert(
      fc.property(range(275, 290), range(320, 360), range(0.01, 1), (cold, hot, part) => {
        const mixed = cold + part * (hot - cold)
        const share = numberOf(hotShare({ hot, cold, mixed }))
        expect(share * hot + (1 - share) * cold).toBeCloseTo(mixed, 9)
      }),
    )
  })

  it('a tank gives more water the cooler it is taken, and never less than its usable part', () => {
    fc.assert(
      fc.property(range(0, 1), range(0, 1), range(291, 330), range(291, 330), (volume, usable, one, other) => {
        const tank = { volume, usable, hot: 330, cold: 290 }
        const at = (mixed: number): number => numberOf(mixedVolume({ ...tank, mixed }))
        expect(at(Math.min(one, other))).toBeGreaterThanOrEqual(at(Math.max(one, other)))
        expect(at(one)).toBeGreaterThanOrEqual(volume * usable * (1 - 1e-12))
      }),
    )
  })

  it('supply grows steadily with the period', () => {
    const supply = { volume: 0.2, usable: 0.8, stored: 333, cold: 283, delivered: 322 }
    fc.assert(
      fc.property(range(0, 50_000), range(0, 86_400), range(0, 86_400), (heatRate, one, other) => {
        const within = (period: number): number => numberOf(deliverable({ ...supply, heatRate, period }))
        expect(within(one) + within(other)).toBeCloseTo(within(one + other) + within(0), 6)
        expect(numberOf(recovery({ heatRate: 0, cold: 283, hot: 322 }))).toBe(0)
      }),
    )
  })

  it('the tank for a demand delivers that demand', () => {
    const supply = { usable: 0.8, stored: 333, cold: 283, delivered: 322, period: 600 }
    fc.assert(
      fc.property(range(0, 50_000), range(0, 2), (heatRate, demand) => {
        const volume = numberOf(tankForDemand({ ...supply, heatRate, demand }))
        const delivered = numberOf(deliverable({ ...supply, heatRate, volume }))
        if (volume > 0) expect(delivered).toBeCloseTo(demand, 9)
        expect(delivered).toBeGreaterThanOrEqual(demand - 1e-9)
      }),
    )
  })

  it('demand adds up over fixtures', () => {
    const fixture = fc.record({ name: fc.constant('tap'), volume: range(0, 1), temperature: range(283, 322) })
    fc.assert(
      fc.property(fc.array(fixture, { maxLength: 5 }), fc.array(fixture, { maxLength: 5 }), (one, other) => {
        const demand = (fixtures: typeof one): number =>
          numberOf(hotWaterDemand({ fixtures, cold: 283, delivered: 322 }))
        expect(demand(one) + demand(other)).toBeCloseTo(demand([...one, ...other]), 9)
      }),
    )
  })

  it('a reserve is never above a full tank, and a larger source never lowers it', () => {
    const draw = fc.record({ start: range(0, 86_400), heat: range(0, 2e7) })
    fc.assert(
      fc.property(fc.array(draw, { maxLength: 12 }), range(0, 5e7), range(0, 3e4), (draws, usableHeat, heatRate) => {
        const lowest = (rate: number): number => numberOf(lowestReserve({ usableHeat, heatRate: rate, draws }))
        expect(lowest(heatRate)).toBeLessThanOrEqual(usableHeat)
        expect(lowest(heatRate * 2)).toBeGreaterThanOrEqual(lowest(heatRate) - 1e-6)
        expect(numberOf(lowestReserve({ usableHeat, heatRate, draws: draws.toReversed() }))).toBeCloseTo(
          lowest(heatRate),
          3,
        )
      }),
    )
  })

  it('a coil gives what it is rated for', () => {
    fc.assert(
      fc.property(range(1, 30), range(1, 30), range(100, 50_000), (drop, above, heatRate) => {
        const tank = 320
        const rating = { heatRate, tank, leaving: tank + above, entering: tank + above + drop }
        const conductance = numberOf(coilConductance(rating))
        const given = coilHeatRate({ conductance, flowCapacity: heatRate / drop, entering: rating.entering, tank })
        expect(numberOf(given) / heatRate).toBeCloseTo(1, 9)
      }),
    )
  })

  it('a coil warms a tank no faster with a smaller boiler or a warmer target', () => {
    fc.assert(
      fc.property(range(1000, 60_000), range(300, 345), range(0, 5), (boilerOutput, to, more) => {
        const tank = { conductance: 1000, flowCapacity: 1500, entering: 353, volume: 0.2, from: 283 }
        const time = (output: number, target: number): number =>
          numberOf(coilReheatTime({ ...tank, boilerOutput: output, to: target }))
        expect(time(boilerOutput, to + more)).toBeGreaterThanOrEqual(time(boilerOutput, to) * 0.9999)
        expect(time(boilerOutput * 2, to)).toBeLessThanOrEqual(time(boilerOutput, to))
      }),
    )
  })

  it('hotter water never burns more slowly', () => {
    const list = fc.constantFrom('second-degree', 'full-thickness', 'leaflet')
    fc.assert(
      fc.property(list, range(300, 350), range(300, 350), (name, one, other) => {
        const time = (temperature: number): number => numberOf(burnTime({ temperature, list: name, partOfAdult: 1 }))
        expect(time(Math.max(one, other))).toBeLessThanOrEqual(time(Math.min(one, other)) * (1 + 1e-12))
        expect(time(one)).toBeGreaterThan(0)
      }),
    )
  })

  it('insulation never makes a pipe of 1/2 in. or more lose more than bare, and warm water loses more', () => {
    fc.assert(
      fc.property(
        range(0.015, 0.06),
        range(0.006, 0.05),
        range(300, 360),
        range(0, 20),
        (diameter, thickness, water, more) => {
          const pipe = { outsideDiameter: diameter, air: 293, surface: { emissivity: 0.9 } }
          const insulation = { thickness, conductivity: 0.04 }
          const insulated = numberOf(pipeHeatLoss({ ...pipe, water, insulation }))
          expect(insulated).toBeLessThan(numberOf(pipeHeatLoss({ ...pipe, water })))
          expect(numberOf(pipeHeatLoss({ ...pipe, water: water + more, insulation }))).toBeGreaterThanOrEqual(insulated)
        },
      ),
    )
  })

  it('a loop comes back between the air and its supply', () => {
    fc.assert(
      fc.property(
        range(300, 350),
        range(270, 300),
        range(0, 200),
        range(1e-6, 1e-3),
        (supply, air, conductance, flow) => {
          const back = numberOf(recirculationReturn({ supply, air, conductance, flow }))
          expect(back).toBeGreaterThanOrEqual(air - 1e-9)
          expect(back).toBeLessThanOrEqual(supply + 1e-9)
        },
      ),
    )
  })
})
