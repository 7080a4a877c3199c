import { describe, expect, it } from 'vitest'
import {
  airChangeConductance,
  airHeatCapacity,
  billConductance,
  billLoad,
  billLoadBand,
  conductanceOfLayers,
  crossCheck,
  energySignature,
  leakage,
  loadAt,
  loadOfArea,
  loadPlausibility,
  loadShare,
  loadSum,
  monthDegreeDays,
  monthMean,
  outputAtRatio,
  outputOverLoad,
  roomConductance,
  roomLoad,
  signatureLoad,
  variableBase,
  weatherBins,
  widestAgreement,
} from '../../../src/sizing/load/index.js'
import { normalDegreeDays } from '../../../src/tables/index.js'
import { si } from '../../../src/units/index.js'
import { numberOf } from '../number-of.js'
import { within } from '../within.js'

const kelvin = (text: string): number => si('temperature', text)
const celsius = (degrees: number): number => degrees + 273.15
const watts = (number: number): number => number * si('heatRate', '1 Btu/h')
const btu = (power: number): number => power / si('heatRate', '1 Btu/h')
const cubicFoot = si('volume', '1 ft3')
const therm = 1e5 * si('heatRate', '1 Btu/h') * 3600

describe('rooms', () => {
  // 140 m2 wall 1.6, 24 window 2.8, 80 roof 0.4, 80 floor 0.5 on a cellar at half the difference, 400 m3, 0.7 an hour, 30 K.
  const house = {
    name: 'house',
    surfaces: [
      { name: 'wall', area: 140, conductance: 1.6, toOutside: 1 },
      { name: 'window', area: 24, conductance: 2.8, toOutside: 1 },
      { name: 'roof', area: 80, conductance: 0.4, toOutside: 1 },
      { name: 'floor', area: 80, conductance: 0.5, toOutside: 0.5 },
    ],
    slabEdges: [],
    thermalBridges: 0,
    volume: 400,
    airChange: 0.7 / 3600,
    airHeatCapacity: 1224,
  }

  it('sum to 13,152 W', () => {
    const load = roomLoad(house, { indoor: celsius(20), outdoor: celsius(-10) })
    expect(numberOf(load)).toBeCloseTo(13_152, 6)
    expect(load.sized && load.working.map(({ name }) => name)).toEqual([
      'wall',
      'window',
      'roof',
      'floor',
      'air change',
      'conductance of house',
      'indoors above outdoors',
      'load of house',
    ])
  })

  it('edges and corners count with the surfaces, the edge of a slab by its length', () => {
    const edged = { ...house, thermalBridges: 0.1, slabEdges: [{ name: 'edge', length: 36, conductance: 0.9 }] }
    // 140 + 24 + 80 + 80/2 = 284 m2 that see the whole difference.
    expect(numberOf(roomConductance(edged)) - numberOf(roomConductance(house))).toBeCloseTo(28.4 + 32.4, 6)
  })

  // 0.018 Btu/ft3 F by the sea: 0.018 x 0.5 x 10,286 ft3 x 70 F = 6,480 Btu/h; 0.018 rounds 0.01803 at 70 F.
  it('a leaking house loses 6,480 Btu/h', () => {
    const air = numberOf(airHeatCapacity({ altitude: 0, temperature: kelvin('70 F') }))
    const house70 = { volume: 10_286 * cubicFoot, airChange: 0.5 / 3600, airHeatCapacity: air }
    within(0.01, btu(numberOf(airChangeConductance(house70)) * (70 / 1.8)), 6480)
  })

  // exp(-z/8400 m) of an engineering reference; the standard atmosphere of the library is within 1 % up to 2,000 m.
  it.each([0, 500, 1000, 1645.92, 2000])('air at %s m is thinner', (altitude) => {
    const ratio =
      numberOf(airHeatCapacity({ altitude, temperature: 294 })) /
      numberOf(airHeatCapacity({ altitude: 0, temperature: 294 }))
    within(0.01, ratio, Math.exp(-altitude / 8400))
  })

  it('ten changes an hour at 50 Pa are half a change by the wind, two thirds where it is windy', () => {
    expect(numberOf(leakage({ airChangeAt50: 10, exposure: 'usual' }))).toBeCloseTo(0.5, 9)
    expect(numberOf(leakage({ airChangeAt50: 10, exposure: 'windy' }))).toBeCloseTo(2 / 3, 9)
    expect(numberOf(leakage({ airChangeAt50: 10, exposure: 'sheltered' }))).toBeCloseTo(0.4, 9)
  })

  // A check value prints 0.436789 W/m2 K for R 13 with a tolerance of 1e-6; its own arithmetic, 5.678263 / 13 = 0.43678946, is
  // 1.06e-6 above what it prints. The unrounded quotient stands here.
  it('R 13 is 5.678263 / 13 W/m2 K', () => {
    const value = numberOf(conductanceOfLayers([{ name: 'all', resistance: 13 / 5.678263 }]))
    expect(value).toBeCloseTo(5.678263 / 13, 12)
    expect(value.toFixed(6)).toBe('0.436789')
  })

  it('first sample house: 42,850 Btu/h on 2,180 ft2 are 19.7 for a square foot, as usual', () => {
    const house1 = { load: watts(42_850), area: 2180 * si('area', '1 ft2'), difference: 65 / 1.8 }
    const each = numberOf(loadOfArea(house1))
    expect((each * 65) / 5.678263341).toBeCloseTo(19.66, 2)
    expect(loadPlausibility(each)).toBe('usual')
    expect(loadPlausibility(each * 2)).toBe('high')
    expect(loadPlausibility(each / 2)).toBe('low')
  })

  it('zones of the first sample house sum to 42,850 Btu/h; independent doubts of 20 % leave 11 %', () => {
    const zones = [15_850, 13_300, 9800, 3900].map((load, at) => ({
      name: `Z${at + 1}`,
      load: watts(load),
      spread: 0.2,
    }))
    const sum = loadSum(zones)
    expect(sum).toMatchObject({ banded: true })
    if (!sum.banded) return
    expect(btu(sum.band.likely)).toBeCloseTo(42_850, 6)
    expect(sum.band.high / sum.band.likely - 1).toBeCloseTo((0.2 * Math.hypot(15.85, 13.3, 9.8, 3.9)) / 42.85, 6)
  })
})

describe('bills', () => {
  // 34 days, 180 therms, 1,517 F days below 65 F, 80 %, -8 F: 28,873 Btu/h; bill and degree days read in a public thread.
  const bill = {
    energy: 180 * therm,
    otherEnergy: 0,
    efficiency: 0.8,
    degreeDays: 1517 / 1.8,
    balance: kelvin('65 F'),
    designOutdoor: kelvin('-8 F'),
  }

  it('180 therms are 28,873 Btu/h on the design day', () => {
    expect(btu(numberOf(billLoad(bill)))).toBeCloseTo(28_872.8, 1)
  })

  // Efficiency 5 points in 80 alone are 6.3 %; with 10 % of the fuel for other uses, 20 % of that, and 3 F: about 7 %.
  it('doubts widen the band, and none leaves none', () => {
    const doubts = { efficiency: 0.05, otherEnergy: 0.2, balance: 3 / 1.8, days: 34 }
    const band = billLoadBand({ ...bill, otherEnergy: 18 * therm }, doubts)
    expect(band).toMatchObject({ banded: true })
    if (!band.banded) return
    expect(band.band.high / band.band.likely - 1).toBeGreaterThan(0.06)
    expect(band.band.high / band.band.likely - 1).toBeLessThan(0.2)
    const sure = billLoadBand(bill, { efficiency: 0, otherEnergy: 0, balance: 0, days: 34 })
    expect(sure.banded && sure.band.high - sure.band.low).toBeCloseTo(0, 9)
  })

  it('rooms and bills agree within 25 %', () => {
    expect(numberOf(crossCheck({ rooms: 350, bills: 280 }))).toBeCloseTo(-0.2, 9)
    expect(Math.abs(numberOf(crossCheck({ rooms: 350, bills: 450 })))).toBeGreaterThan(widestAgreement)
    expect(numberOf(billConductance(bill))).toBeCloseTo(numberOf(billLoad(bill)) / (73 / 1.8), 6)
  })

  // The slope of four exact points; and a scattered set worked by hand: x 0 5 10, y 6 4 3 kW, mean 5 and 13/3,
  // slope -15/50 = -0.3, residuals 1/6 -1/3 1/6, s2 = 1/6, standard error of the slope sqrt(1/6/50) = 0.05774, t 12.706.
  it('a signature tells how sure it is', () => {
    const periods = [
      [0, 6000],
      [5, 4000],
      [10, 3000],
    ].map(([outdoor = 0, load = 0]) => ({ outdoor: celsius(outdoor), load }))
    const result = energySignature(periods)
    expect(result).toMatchObject({ fitted: true })
    if (!result.fitted) return
    expect(result.signature.conductance).toBeCloseTo(300, 6)
    expect(result.signature.conductanceOff).toBeCloseTo(12.706 * 57.735, 1)
    expect(result.signature.balance).toBeCloseTo(celsius(5 + 13 / 0.9), 6)
    expect(result.signature.fit).toBeCloseTo(1 - 1 / 6 / (14 / 3), 6)
    const here = signatureLoad(result.signature, celsius(5))
    expect(here.likely).toBeCloseTo(13_000 / 3, 6)
    // At the mean the error of the line is s / sqrt 3.
    expect(here.high - here.likely).toBeCloseTo(12.706 * Math.sqrt(1e6 / 6 / 3), 3)
    const far = signatureLoad(result.signature, celsius(-20))
    expect(far.high - far.likely).toBeGreaterThan(here.high - here.likely)
  })

  it('two periods give a line and no band', () => {
    const result = energySignature([
      { outdoor: 268.15, load: 7500 },
      { outdoor: 283.15, load: 3000 },
    ])
    expect(result).toMatchObject({ fitted: true, signature: { balance: 293.15 } })
    if (!result.fitted) return
    expect(result.signature.conductanceOff).toBeUndefined()
    expect(signatureLoad(result.signature, 258.15)).toMatchObject({ low: 0, high: Infinity })
  })

  // Bills made from a house of 400 W of fuel a degree, balance 16 C and 500 W of other uses must give them back.
  it('a year of bills gives back the house it was made from', () => {
    const means = [-3, -1, 4, 9, 14, 19, 22, 21, 16, 10, 5, -1].map(celsius)
    const periods = means.map((mean) => {
      const month = { days: 30, mean, spread: 4 }
      const degrees = numberOf(monthDegreeDays({ ...month, base: celsius(16) }))
      return { ...month, energy: (400 * degrees + 500 * 30) * 86_400 }
    })
    const bases = Array.from({ length: 21 }, (_, step) => celsius(10 + step * 0.5))
    const found = variableBase(periods, bases)
    expect(numberOf(found.balance)).toBeCloseTo(celsius(16), 9)
    expect(numberOf(found.fuelConductance)).toBeCloseTo(400, 6)
    expect(numberOf(found.otherUses)).toBeCloseTo(500, 6)
    expect(found.fit).toBeCloseTo(1, 9)
  })
})

describe('load and installed output', () => {
  it('first sample house: 70,000 over 42,850 Btu/h are 1.63; within 1.4 fits 59,990', () => {
    expect(numberOf(outputOverLoad({ output: watts(70_000), load: watts(42_850) }))).toBeCloseTo(1.63, 2)
    expect(btu(numberOf(outputAtRatio({ load: watts(42_850), ratio: 1.4 })))).toBeCloseTo(59_990, 6)
  })

  // 15,850 Btu/h between 5 F and 70 F: 3,660 at 55 F.
  it('Z1 takes 3,660 Btu/h at 55 F', () => {
    const line = { designOutdoor: kelvin('5 F'), balance: kelvin('70 F') }
    within(0.001, btu(numberOf(loadAt({ line, designLoad: watts(15_850), outdoor: kelvin('55 F') }))), 3660)
    expect(numberOf(loadShare(line, kelvin('80 F')))).toBe(0)
    expect(loadShare(line, kelvin('-9 F'))).toMatchObject({ value: 1, valid: false })
  })
})

describe('weather', () => {
  // New England, NOAA normals: means that give back the degree days, and bins of those months that carry about as many.
  it('degree days of a region make bins that hold them again', () => {
    const region = normalDegreeDays('new-england')!
    const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
    const base = kelvin('65 F')
    const months = region.months!.map((degreeDays, at) => {
      const month = { days: days[at]!, spread: 4.5 }
      return { ...month, mean: numberOf(monthMean({ ...month, degreeDays, base })), swing: 0 }
    })
    const weather = weatherBins(months, 0.5)
    expect(weather).toMatchObject({ binned: true })
    if (!weather.binned) return
    const hours = weather.bins.reduce((sum, bin) => sum + bin.hours, 0)
    expect(hours).toBeCloseTo(8760, 3)
    const degreeHours = weather.bins.reduce((sum, bin) => sum + bin.hours * Math.max(0, base - bin.outdoor), 0)
    within(0.002, degreeHours / 24, region.year)
  })

  it('a swing within the day widens the bins', () => {
    const spreadOf = (swing: number): number => {
      const weather = weatherBins([{ days: 30, mean: 273.15, spread: 4, swing }], 0.25)
      if (!weather.binned) throw new Error(weather.why)
      return weather.bins.reduce((sum, { outdoor, hours }) => sum + (hours / 720) * (outdoor - 273.15) ** 2, 0)
    }
    // Variances add: 16 from the days, 25/2 from a cosine of 5 K, and 0.25**2 / 12 from the width of a bin.
    expect(spreadOf(0)).toBeCloseTo(16 + 0.0052, 2)
    expect(spreadOf(5)).toBeCloseTo(28.5 + 0.0052, 2)
  })
})
