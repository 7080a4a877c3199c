import { describe, expect, it } from 'vitest'
import { flueGasDensity, flueGasFlow } from '../../../src/sizing/combustion/index.js'
import {
  combinedVentLengthLeft,
  fittingsLeft,
  highestFlueTemperature,
  hottestWaterForVent,
  largestFlue,
  orphanedFlueRatio,
  ventLengthLeft,
  ventPressureLoss,
} from '../../../src/sizing/vent/index.js'
import { fuelNamed, highestVentTemperature } from '../../../src/tables/index.js'
import { si } from '../../../src/units/index.js'
import { numberOf } from '../number-of.js'

const foot = si('length', '1 ft')
const run = (straight: number, ninety: number, fortyFive: number) => ({
  straight: straight * foot,
  fittings: [
    { name: 'elbow90', count: ninety, each: 5 * foot },
    { name: 'elbow45', count: fortyFive, each: 3 * foot },
  ],
})
const limit = { most: 70 * foot, altitudeFactor: 1 }

describe('length left of a vent', () => {
  // Both sample houses: 2 in. with 70 ft, elbows 5 and 3 ft. First house: exhaust, intake; second: as built, as approved, intake.
  it.each([
    [19.5, 3, 2, 29.5],
    [17, 3, 0, 38],
    [38, 7, 2, -9],
    [38, 4, 0, 12],
    [36, 5, 0, 9],
  ])('%s ft with %s and %s elbows leaves %s of 70 ft', (straight, ninety, fortyFive, left) => {
    expect(numberOf(ventLengthLeft({ pipe: run(straight, ninety, fortyFive), ...limit })) / foot).toBeCloseTo(left, 9)
  })

  // Mutations of the first house: four elbows more still fit, six do not.
  it('of the first house takes five more elbows, and no sixth', () => {
    const left = numberOf(ventLengthLeft({ pipe: run(19.5, 3, 2), ...limit }))
    expect(numberOf(fittingsLeft({ left, each: 5 * foot }))).toBe(5)
    expect(numberOf(ventLengthLeft({ pipe: run(19.5, 9, 2), ...limit })) / foot).toBeCloseTo(-0.5, 9)
  })

  it('shrinks with the altitude factor of the maker', () => {
    expect(numberOf(ventLengthLeft({ pipe: run(50, 0, 0), most: 70 * foot, altitudeFactor: 0.8 })) / foot).toBeCloseTo(
      6,
      9,
    )
  })

  it('of both sides together', () => {
    const both = { exhaust: run(19.5, 3, 2), intake: run(17, 3, 0) }
    const left = combinedVentLengthLeft({ ...both, most: 100 * foot, altitudeFactor: 1 })
    expect(numberOf(left) / foot).toBeCloseTo(27.5, 9)
    expect(left.sized && left.working.map(({ name }) => name)).toContain('intake: equivalent length')
  })

  it('names the fitting that cannot be', () => {
    const pipe = { straight: 1, fittings: [{ name: 'elbow90', count: -1, each: 1 }] }
    expect(ventLengthLeft({ pipe, ...limit })).toEqual({
      sized: false,
      why: 'The count of elbow90 cannot be -1: it is zero or more.',
    })
  })

  it('exactly used up takes no more fittings, exactly five take five', () => {
    expect(numberOf(fittingsLeft({ left: 0, each: 5 * foot }))).toBe(0)
    expect(numberOf(fittingsLeft({ left: 25 * foot, each: 5 * foot }))).toBe(5)
    expect(numberOf(fittingsLeft({ left: -1, each: 5 * foot }))).toBe(0)
  })
})

describe('highest flue temperature', () => {
  // First sample house: a built-in flue limit of 149 F, which is what PVC bears by common practice.
  it('is the limit built into the boiler where that is lower', () => {
    const flue = { hottestWater: si('temperature', '180 F'), approach: 30 / 1.8 }
    const limited = numberOf(highestFlueTemperature({ ...flue, builtInLimit: si('temperature', '149 F') }))
    expect(limited).toBe(highestVentTemperature('pvc'))
    expect(numberOf(highestFlueTemperature(flue))).toBeCloseTo(si('temperature', '210 F'), 9)
  })

  // Without it 180 F water is too hot for PVC and, with 30 F more, for CPVC; polypropylene takes it.
  it('with 180 F water rules PVC and CPVC out', () => {
    const hottest = (material: 'pvc' | 'cpvc' | 'polypropylene'): number =>
      numberOf(hottestWaterForVent({ highest: highestVentTemperature(material), approach: 30 / 1.8 }))
    expect(hottest('pvc')).toBeLessThan(si('temperature', '180 F'))
    expect(hottest('cpvc')).toBeLessThan(si('temperature', '180 F'))
    expect(hottest('polypropylene')).toBeGreaterThan(si('temperature', '180 F'))
  })
})

describe('an orphaned flue', () => {
  // Second sample house: 6.75 x 10.75 in. over a 3 in. draft hood; 7 times is the limit of the fuel gas code.
  it('of 72.6 in2 over a 3 in. draft hood: 10.3 times, where 49.5 in2 are allowed', () => {
    const flue = { flueArea: 6.75 * 10.75 * si('area', '1 in2'), outletDiameters: [si('length', '3 in')] }
    expect(numberOf(orphanedFlueRatio(flue))).toBeCloseTo(10.27, 2)
    expect(numberOf(largestFlue({ ...flue, mostRatio: 7 })) / si('area', '1 in2')).toBeCloseTo(49.5, 1)
  })

  it('is judged by the smallest outlet, and not at all where nothing stays', () => {
    expect(numberOf(orphanedFlueRatio({ flueArea: 1, outletDiameters: [0.2, 0.1] }))).toBeCloseTo(400 / Math.PI, 9)
    expect(orphanedFlueRatio({ flueArea: 1, outletDiameters: [] }).sized).toBe(false)
    expect(largestFlue({ outletDiameters: [], mostRatio: 7 }).sized).toBe(false)
  })
})

describe('pressure loss of a vent', () => {
  // Computed: methane, 25 % excess air, 60 C, 15 m and K 3, roughness 1.5e-6 m.
  it.each([
    [30, 0.0779, 28.3],
    [30, 0.0525, 168],
    [45, 0.0779, 59.4],
  ])('%s kW in %s m: %s Pa', (kilowatts, diameter, pascals) => {
    const flue = { fuel: fuelNamed('methane'), excessAir: 0.25, temperature: 333.15, pressure: 101_325 }
    const loss = ventPressureLoss({
      flow: numberOf(flueGasFlow({ ...flue, heatInput: kilowatts * 1000 })),
      density: numberOf(flueGasDensity(flue)),
      viscosity: 1.95e-5,
      diameter,
      length: 15,
      roughness: 1.5e-6,
      resistance: 3,
    })
    expect(Math.abs(numberOf(loss) / pascals - 1)).toBeLessThan(0.003)
  })
})
