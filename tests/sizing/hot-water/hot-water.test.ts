import { describe, expect, it } from 'vitest'
import {
  coilConductance,
  coilConductanceAtFlow,
  coilHeatRate,
  coilReheatTime,
  deliverable,
  firstHour,
  fixtureDemand,
  fixtureStorage,
  hotShare,
  hotWaterDemand,
  hotWaterLeft,
  lowestReserve,
  mixedVolume,
  recovery,
  reheatTime,
  tankForDemand,
} from '../../../src/sizing/hot-water/index.js'
import { hotWaterProfile } from '../../../src/tables/index.js'
import { si } from '../../../src/units/index.js'
import { numberOf } from '../number-of.js'

const gallon = si('volume', '1 gal')
const kelvin = (text: string): number => si('temperature', text)
const watts = (text: string): number => si('heatRate', text)
const within = (share: number, value: number, expected: number): void =>
  expect(Math.abs(value / expected - 1)).toBeLessThan(share)

// First sample house: 45 gal at 140 F, cold 45 F, delivered at 120 F, 70,000 Btu/h.
const firstHouse = {
  volume: 45 * gallon,
  usable: 0.8,
  stored: kelvin('140 F'),
  cold: kelvin('45 F'),
  delivered: kelvin('120 F'),
  heatRate: watts('70000 Btu/h'),
}

describe('mixing', () => {
  // Vector of the sample houses, and 105/50/140 F of an engineering reference.
  it.each([
    ['140 F', '45 F', '120 F', 0.7895],
    ['140 F', '50 F', '105 F', 0.6111],
  ])('%s with %s to %s: %s of it is hot', (hot, cold, mixed, share) => {
    expect(numberOf(hotShare({ hot: kelvin(hot), cold: kelvin(cold), mixed: kelvin(mixed) }))).toBeCloseTo(share, 4)
  })

  it('goes neither above hot nor below cold', () => {
    expect(hotShare({ hot: 330, cold: 280, mixed: 331 })).toEqual({
      sized: false,
      why: 'Water at 330 K cannot be mixed to 331 K.',
    })
    expect(hotShare({ hot: 330, cold: 280, mixed: 280 }).sized).toBe(false)
  })

  // A planted fault: 60 gal at 140 F give 70 gal at 110 F before the coil helps, with 45 F cold water and 0.8 usable.
  it('60 gal at 140 F give 70 gal at 110 F', () => {
    const tank = {
      volume: 60 * gallon,
      usable: 0.8,
      hot: kelvin('140 F'),
      cold: kelvin('45 F'),
      mixed: kelvin('110 F'),
    }
    within(0.01, numberOf(mixedVolume(tank)) / gallon, 70)
  })
})

describe('first hour', () => {
  // 45.6 + 112 by the rounded 8.33 lb/gal; with the density at 83 F the source gives 0.5 % more.
  it('of the first sample house: 157.6 gal', () => {
    within(0.01, numberOf(firstHour(firstHouse)) / gallon, 157.6)
  })

  // 100,000 Btu/h, 77 F rise: 156.8 gal/h with 8.28 lb/gal, the density near 90 F.
  it('recovery of 100,000 Btu/h over 77 F around 90 F: 156.8 gal/h', () => {
    const flow = numberOf(recovery({ heatRate: watts('100000 Btu/h'), cold: kelvin('51.5 F'), hot: kelvin('128.5 F') }))
    within(0.006, flow / si('volumeFlow', '1 gal/h'), 156.848)
  })

  it('reheat of the first sample house: 24 min', () => {
    const { volume, cold, delivered, heatRate } = firstHouse
    within(0.02, numberOf(reheatTime({ volume, from: cold, to: delivered, heatRate })) / 60, 24)
  })
})

describe('demand against supply', () => {
  // First sample house: two showers 32 gal at 105 F, a bath of 30, dishwasher 5 at 120, kitchen 6 at 110, laundry 8 at 100.
  const fixtures = [
    { name: 'showers', volume: 32 * gallon, temperature: kelvin('105 F') },
    { name: 'bath', volume: 30 * gallon, temperature: kelvin('105 F') },
    { name: 'dishwasher', volume: 5 * gallon, temperature: kelvin('120 F') },
    { name: 'kitchen', volume: 6 * gallon, temperature: kelvin('110 F') },
    { name: 'laundry', volume: 8 * gallon, temperature: kelvin('100 F') },
  ]
  const { cold, delivered } = firstHouse

  it('of the first sample house: 65.7 gal at 120 F in the worst hour', () => {
    const demand = numberOf(hotWaterDemand({ fixtures, cold, delivered }))
    expect(demand / gallon).toBeCloseTo(65.7, 1)
    const left = numberOf(hotWaterLeft({ deliverable: numberOf(firstHour(firstHouse)), demand }))
    within(0.02, left / gallon, 157.6 - 65.7)
  })

  // By hand: 45.6 gal and a sixth, once and 24 times 112 gal.
  it.each([
    [600, 64.3],
    [3600, 157.6],
    [86_400, 2734],
  ])('supply of the first sample house in %s s: %s gal', (period, gallons) => {
    within(0.01, numberOf(deliverable({ ...firstHouse, period })) / gallon, gallons)
  })

  it('no fixture gets water warmer than it is delivered', () => {
    const tub = [{ name: 'tub', volume: gallon, temperature: kelvin('130 F') }]
    expect(hotWaterDemand({ fixtures: tub, cold, delivered })).toMatchObject({ sized: false })
  })

  // By hand: (80 gal - a sixth of 113) x 0.7895 / 0.8.
  it('asks for a tank: 80 gal in ten minutes take 60 gal, little enough takes none', () => {
    const water = { ...firstHouse, demand: 80 * gallon, period: 600 }
    within(0.01, numberOf(tankForDemand(water)) / gallon, 60.4)
    expect(numberOf(tankForDemand({ ...water, demand: 10 * gallon }))).toBe(0)
    expect(tankForDemand({ ...water, usable: 0 }).sized).toBe(false)
  })

  // By hand from 30 gal a shower, 2 a lavatory, 20 a bath; demand factor 0.30, storage factor 0.70.
  it('by the fixture method', () => {
    const demand = numberOf(
      fixtureDemand([
        { fixture: 'shower', count: 2 },
        { fixture: 'lavatory', count: 3 },
        { fixture: 'bathtub', count: 1 },
      ]),
    )
    expect(demand / gallon).toBeCloseTo(25.8, 9)
    expect(numberOf(fixtureStorage(demand)) / gallon).toBeCloseTo(18.06, 9)
  })
})

describe('a day of draws', () => {
  // Two draws of 10 MJ an hour apart with 1 kW: 15 - 10 + 3.6 - 10 MJ.
  it('falls as low as the draws leave it', () => {
    const draws = [
      { start: 28_800, heat: 10e6 },
      { start: 25_200, heat: 10e6 },
    ]
    expect(numberOf(lowestReserve({ usableHeat: 15e6, heatRate: 1000, draws }))).toBeCloseTo(-1.4e6, 3)
  })

  // Largest draw of the test day L is a bath of 3.605 kWh; 24 kW fill up what was drawn in the hour before it.
  it('of size L leaves a tank of 4 kWh with 24 kW something, of 3.5 kWh nothing', () => {
    const { draws } = hotWaterProfile('L')
    const lowest = (kilowattHours: number): number =>
      numberOf(lowestReserve({ usableHeat: kilowattHours * 3.6e6, heatRate: 24_000, draws }))
    expect(lowest(4)).toBeGreaterThan(0)
    expect(lowest(3.5)).toBeLessThan(0)
  })
})

describe('a coil in a tank', () => {
  // Computed: 25 kW, 80 to 65 C into a tank at 50 C.
  it('of 25 kW at 80/65/50 C has 1,155 W/K and gives those 25 kW back', () => {
    const rating = { entering: 353.15, leaving: 338.15, tank: 323.15 }
    const conductance = numberOf(coilConductance({ heatRate: 25_000, ...rating }))
    expect(conductance).toBeCloseTo(1155.25, 2)
    const flowCapacity = 25_000 / 15
    expect(numberOf(coilHeatRate({ conductance, flowCapacity, entering: 353.15, tank: 323.15 }))).toBeCloseTo(25_000, 6)
  })

  // 180 F water: a store at 140 F takes 40/60 of the heat that one at 120 F takes.
  it('gives a warmer tank less: two thirds', () => {
    const coil = { conductance: 1000, flowCapacity: 1500, entering: kelvin('180 F') }
    const at = (tank: string): number => numberOf(coilHeatRate({ ...coil, tank: kelvin(tank) }))
    expect(at('140 F') / at('120 F')).toBeCloseTo(2 / 3, 9)
    expect(numberOf(coilHeatRate({ ...coil, entering: 300, tank: 310 }))).toBe(0)
  })

  it('with half the flow keeps 71 % of its conductance at the exponent 0.5', () => {
    expect(numberOf(coilConductanceAtFlow({ conductance: 1000, flowRatio: 0.5, exponent: 0.5 }))).toBeCloseTo(707.1, 1)
  })

  it('that leaves the water as warm as it came still has a conductance', () => {
    const rating = { heatRate: 1000, entering: 343.15, leaving: 343.15, tank: 323.15 }
    expect(numberOf(coilConductance(rating))).toBe(50)
  })

  const tank = { conductance: 1155, flowCapacity: 1667, entering: 353.15, volume: 0.17, from: 283.15, to: 333.15 }

  it('that is large leaves the time to the boiler', () => {
    const boilerOutput = 5000
    const plain = reheatTime({ volume: tank.volume, from: tank.from, to: tank.to, heatRate: boilerOutput })
    expect(numberOf(coilReheatTime({ ...tank, boilerOutput }))).toBeCloseTo(numberOf(plain), 6)
  })

  // By hand for a boiler without limit: (0.17 x 4.15e6 / 833.7) x ln(70 / 20) = 1,060 s.
  it('that is small warms it ever more slowly', () => {
    within(0.01, numberOf(coilReheatTime({ ...tank, boilerOutput: 1e6 })), 1060)
    expect(coilReheatTime({ ...tank, to: 353.15, boilerOutput: 1e6 })).toEqual({
      sized: false,
      why: 'A coil fed with 353.15 K never warms the tank to 353.15 K.',
    })
  })
})
