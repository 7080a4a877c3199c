import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  boilerFlow,
  boilerRise,
  burnerOffTime,
  burnerOnTime,
  burnerShare,
  burnerStarts,
  burnerYear,
  coolDown,
  cyclesAbove,
  makerEfficiency,
  mostBurnerStarts,
  outputAtAltitude,
  outputWithOneOut,
  seasonEfficiency,
  waterForRun,
} from '../../../src/sizing/boiler/index.js'
import { loadAt } from '../../../src/sizing/load/index.js'
import { numberOf } from '../number-of.js'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const burner = fc.record({
  lowestOutput: number(1000, 50_000),
  volume: number(0.01, 2),
  heatCapacity: number(3.5e6, 4.2e6),
  swing: number(1, 20),
})
const part = number(0.01, 0.99)
const line = { designOutdoor: 255, balance: 291 }

describe('laws of the burner', () => {
  it('on time and water for it are each other backwards', () => {
    fc.assert(
      fc.property(burner, part, (of, share) => {
        const cycling = { ...of, load: of.lowestOutput * share }
        const onTime = numberOf(burnerOnTime(cycling))
        expect(numberOf(waterForRun({ ...cycling, onTime })) / of.volume).toBeCloseTo(1, 9)
      }),
    )
  })

  it('runs for the share of the time that the load asks', () => {
    fc.assert(
      fc.property(burner, part, (of, share) => {
        const cycling = { ...of, load: of.lowestOutput * share }
        const [on, off] = [numberOf(burnerOnTime(cycling)), numberOf(burnerOffTime(cycling))]
        expect(on / (on + off)).toBeCloseTo(numberOf(burnerShare(cycling)), 9)
      }),
    )
  })

  it('never starts more often than at half its lowest fire', () => {
    fc.assert(
      fc.property(burner, number(0, 2), (of, share) => {
        const starts = numberOf(burnerStarts({ ...of, load: of.lowestOutput * share }))
        expect(starts).toBeLessThanOrEqual(numberOf(mostBurnerStarts(of)) * (1 + 1e-9))
        expect(starts).toBeGreaterThanOrEqual(0)
      }),
    )
  })

  it('meets its lowest fire where it begins to cycle', () => {
    fc.assert(
      fc.property(number(2000, 50_000), part, (designLoad, share) => {
        const lowestOutput = designLoad * share
        const outdoor = numberOf(cyclesAbove({ line, designLoad, lowestOutput }))
        expect(numberOf(loadAt({ line, designLoad, outdoor })) / lowestOutput).toBeCloseTo(1, 6)
      }),
    )
  })

  it('hours of the year are those that need heat', () => {
    const bins = fc.array(fc.record({ outdoor: number(240, 305), hours: number(0, 900) }), { maxLength: 20 })
    fc.assert(
      fc.property(bins, number(1000, 9000), (weather, lowestOutput) => {
        const year = burnerYear({ bins: weather, line, designLoad: 12_000, lowestOutput, highestOutput: 10_000 })
        if (!year.told) throw new Error(year.why)
        const { cycling, following, short } = year.hours
        const heated = weather.filter(({ outdoor }) => outdoor < line.balance)
        expect(cycling + following + short).toBeCloseTo(
          heated.reduce((sum, { hours }) => sum + hours, 0),
          6,
        )
      }),
    )
  })
})

describe('laws of boilers', () => {
  it('flow and rise are each other backwards', () => {
    fc.assert(
      fc.property(number(100, 1e5), number(1, 50), (heat, rise) => {
        const water = { heat, heatCapacity: 4.1e6 }
        expect(numberOf(boilerRise({ ...water, flow: numberOf(boilerFlow({ ...water, rise })) }))).toBeCloseTo(rise, 9)
      }),
    )
  })

  it('higher places never give more', () => {
    fc.assert(
      fc.property(number(0, 5000), number(0, 5000), (one, other) => {
        const at = (altitude: number): number =>
          numberOf(outputAtAltitude({ output: 1e4, altitude, makerTable: [], countedFrom: 'two-thousand-feet' }))
        expect(at(Math.max(one, other))).toBeLessThanOrEqual(at(Math.min(one, other)))
        expect(at(one)).toBeGreaterThan(0)
      }),
    )
  })

  it('one boiler out leaves at most a share, and one more boiler never less', () => {
    const boiler = fc.record({
      name: fc.constant('B'),
      lowestOutput: fc.constant(100),
      highestOutput: number(100, 1e5),
    })
    fc.assert(
      fc.property(fc.array(boiler, { minLength: 1, maxLength: 6 }), boiler, (plant, more) => {
        const left = numberOf(outputWithOneOut(plant))
        const all = plant.reduce((sum, { highestOutput }) => sum + highestOutput, 0)
        expect(left).toBeLessThanOrEqual((all * (plant.length - 1)) / plant.length + 1e-6)
        expect(numberOf(outputWithOneOut([...plant, more]))).toBeGreaterThanOrEqual(left - 1e-6)
      }),
    )
  })

  it('rooms never cool below outdoors, nor warm while they wait', () => {
    fc.assert(
      fc.property(number(0, 1e7), number(240, 310), (interruption, outdoor) => {
        const fall = numberOf(coolDown({ interruption, heatCapacity: 4e7, conductance: 300, indoor: 293, outdoor }))
        expect(fall).toBeGreaterThanOrEqual(0)
        expect(fall).toBeLessThanOrEqual(Math.max(0, 293 - outdoor) + 1e-9)
      }),
    )
  })

  it('the efficiency of a season lies on the curve of the maker', () => {
    const curve = [
      { return: 303, efficiency: 0.96 },
      { return: 333, efficiency: 0.87 },
    ]
    const design = { ...line, room: 293, supply: 343, return: 328, exponent: 1.3 }
    const bins = fc.array(fc.record({ outdoor: number(240, 290), hours: number(1, 900) }), {
      minLength: 1,
      maxLength: 9,
    })
    fc.assert(
      fc.property(bins, (weather) => {
        const efficiency = numberOf(seasonEfficiency({ bins: weather, design, curve }))
        expect(efficiency).toBeGreaterThanOrEqual(numberOf(makerEfficiency(curve, design.return)) - 1e-9)
        expect(efficiency).toBeLessThanOrEqual(0.96 + 1e-9)
      }),
    )
  })
})
