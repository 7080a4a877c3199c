import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  carbonMonoxideAirFree,
  condensate,
  condensedShare,
  condensingEfficiency,
  dewPoint,
  excessAir,
  flueDewPoint,
  flueGasInIntake,
  flueGasFlow,
  oxygenInFlue,
} from '../../../src/sizing/combustion/index.js'
import { type FuelName, fuelNamed } from '../../../src/tables/index.js'
import { numberOf } from '../number-of.js'

const fuel = fc.constantFrom<FuelName>('methane', 'natural-gas', 'propane').map(fuelNamed)
const air = fc.double({ min: 0, max: 3, noNaN: true })
const share = fc.double({ min: 0, max: 1, noNaN: true })
const flue = fc.double({ min: 280, max: 450, noNaN: true })
const heat = fc.double({ min: 0, max: 1e12, noNaN: true })
const pressure = 101_325

describe('laws of combustion', () => {
  it('excess air comes back from the oxygen it leaves', () => {
    fc.assert(
      fc.property(fuel, air, (gas, share_) => {
        const oxygen = numberOf(oxygenInFlue({ fuel: gas, excessAir: share_ }))
        expect(numberOf(excessAir({ fuel: gas, oxygen }))).toBeCloseTo(share_, 8)
      }),
    )
  })

  it('more air never raises the dew point', () => {
    fc.assert(
      fc.property(fuel, air, air, (gas, one, other) => {
        const dew = (excess: number): number => numberOf(flueDewPoint({ fuel: gas, excessAir: excess, pressure }))
        expect(dew(Math.max(one, other))).toBeLessThanOrEqual(dew(Math.min(one, other)) + 1e-9)
      }),
    )
  })

  it('a warmer flue never condenses more and is never more efficient', () => {
    fc.assert(
      fc.property(fuel, air, flue, flue, (gas, excess, one, other) => {
        const at = (flueTemperature: number) => ({ fuel: gas, excessAir: excess, flueTemperature, pressure })
        const [cool, warm] = [at(Math.min(one, other)), at(Math.max(one, other))]
        expect(numberOf(condensedShare(warm))).toBeLessThanOrEqual(numberOf(condensedShare(cool)) + 1e-12)
        const efficiency = (of: typeof cool): number => numberOf(condensingEfficiency({ ...of, jacketLoss: 0 }))
        expect(efficiency(warm)).toBeLessThanOrEqual(efficiency(cool) + 1e-12)
        expect(efficiency(cool)).toBeLessThanOrEqual(1.01)
      }),
    )
  })

  it('nothing condenses above the dew point, something below it', () => {
    fc.assert(
      fc.property(fuel, air, fc.double({ min: 0.1, max: 5, noNaN: true }), (gas, excess, away) => {
        const dew = numberOf(flueDewPoint({ fuel: gas, excessAir: excess, pressure }))
        const at = (flueTemperature: number): number =>
          numberOf(condensedShare({ fuel: gas, excessAir: excess, flueTemperature, pressure }))
        expect(at(dew + away)).toBe(0)
        expect(at(dew - away)).toBeGreaterThan(0)
      }),
    )
  })

  it('condensate adds up, and is nothing for nothing', () => {
    fc.assert(
      fc.property(fuel, heat, heat, share, (gas, one, other, condensedShare_) => {
        const of = (burned: number): number =>
          numberOf(condensate({ fuel: gas, heat: burned, condensedShare: condensedShare_ }))
        expect(of(one) + of(other)).toBeCloseTo(of(one + other), 3)
        expect(of(0)).toBe(0)
      }),
    )
  })

  it('air-free is never less than measured', () => {
    fc.assert(
      fc.property(share, fc.double({ min: 0, max: 0.208, noNaN: true }), (carbonMonoxide, oxygen) => {
        expect(numberOf(carbonMonoxideAirFree({ carbonMonoxide, oxygen }))).toBeGreaterThanOrEqual(
          carbonMonoxide - 1e-15,
        )
      }),
    )
  })

  it('flue gas in the intake comes back from the mixture', () => {
    fc.assert(
      fc.property(share, fc.double({ min: 0, max: 0.15, noNaN: true }), (part, flueOxygen) => {
        const intakeOxygen = 0.209 * (1 - part) + flueOxygen * part
        expect(numberOf(flueGasInIntake({ intakeOxygen: Math.min(0.209, intakeOxygen), flueOxygen }))).toBeCloseTo(
          part,
          9,
        )
      }),
    )
  })

  it('flow of flue gas grows with the fire, and thinner air makes it larger', () => {
    fc.assert(
      fc.property(fuel, air, flue, heat, (gas, excess, temperature, heatInput) => {
        const burner = { fuel: gas, excessAir: excess, temperature, heatInput }
        const flow = numberOf(flueGasFlow({ ...burner, pressure }))
        expect(numberOf(flueGasFlow({ ...burner, pressure: pressure / 2 }))).toBeCloseTo(2 * flow, 3)
        expect(numberOf(flueGasFlow({ ...burner, pressure, heatInput: heatInput * 2 }))).toBeCloseTo(2 * flow, 3)
      }),
    )
  })

  it('a number that cannot be is told in a sentence', () => {
    fc.assert(
      fc.property(fc.constantFrom(NaN, Infinity, -1), (wrong) => {
        expect(dewPoint({ waterShare: wrong, pressure }).sized).toBe(false)
        expect(condensate({ fuel: fuelNamed('methane'), heat: wrong, condensedShare: 1 }).sized).toBe(false)
        expect(oxygenInFlue({ fuel: fuelNamed('methane'), excessAir: wrong }).sized).toBe(false)
      }),
    )
  })
})
