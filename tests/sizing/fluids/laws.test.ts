import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  boilingTemperature,
  fluidConductivity,
  fluidDensity,
  fluidHeatCapacity,
  fluidViscosity,
  type FluidState,
  freezingTemperature,
  glycolMassFraction,
  glycolVolumeFraction,
  strengthAgainstFreezing,
  vaporPressure,
} from '../../../src/sizing/index.js'
import { numberOf } from '../number-of.js'

const glycols = fc.constantFrom('propylene-glycol', 'ethylene-glycol')
const inRange = fc.double({ min: 0, max: 0.55, noNaN: true })
const anyNumber = fc.double()

const properties = [fluidDensity, fluidHeatCapacity, fluidViscosity, fluidConductivity]

describe('laws of fluids', () => {
  it('every property is a positive number, or it is said why not', () => {
    const fluid = fc.oneof(fc.constant('water' as const), fc.record({ glycol: glycols, volumeFraction: anyNumber }))
    fc.assert(
      fc.property(fc.record({ fluid, temperature: anyNumber }), (state: FluidState) => {
        for (const property of properties) {
          const result = property(state)
          expect(result.sized ? Number.isFinite(result.value) && result.value > 0 : result.why.length > 0).toBe(true)
        }
      }),
    )
  })

  it('water and mixtures are thinner the warmer they are', () => {
    fc.assert(
      fc.property(glycols, inRange, fc.double({ min: 5, max: 98, noNaN: true }), (glycol, volumeFraction, celsius) => {
        for (const fluid of ['water', { glycol, volumeFraction }] as const) {
          const at = (more: number): number => numberOf(fluidViscosity({ fluid, temperature: celsius + 273.15 + more }))
          expect(at(1)).toBeLessThan(at(0))
        }
      }),
    )
  })

  it('more glycol is thicker, holds and conducts less heat, and freezes later', () => {
    fc.assert(
      fc.property(glycols, inRange, fc.double({ min: 20, max: 98, noNaN: true }), (glycol, volumeFraction, celsius) => {
        const weak = { fluid: { glycol, volumeFraction }, temperature: celsius + 273.15 }
        const strong = { ...weak, fluid: { glycol, volumeFraction: volumeFraction + 0.02 } }
        expect(numberOf(fluidViscosity(strong))).toBeGreaterThan(numberOf(fluidViscosity(weak)))
        expect(numberOf(fluidHeatCapacity(strong))).toBeLessThan(numberOf(fluidHeatCapacity(weak)))
        expect(numberOf(fluidConductivity(strong))).toBeLessThan(numberOf(fluidConductivity(weak)))
        expect(numberOf(freezingTemperature(strong.fluid))).toBeLessThan(numberOf(freezingTemperature(weak.fluid)))
      }),
    )
  })

  it('mass and volume lead back to each other', () => {
    fc.assert(
      fc.property(glycols, fc.double({ min: 0, max: 1, noNaN: true }), (glycol, mass) => {
        const volume = numberOf(glycolVolumeFraction(glycol, mass))
        expect(glycolMassFraction(glycol, volume).value).toBeCloseTo(mass, 12)
      }),
    )
  })

  it('the strength against a temperature freezes at just that', () => {
    fc.assert(
      fc.property(glycols, fc.double({ min: 0.02, max: 0.55, noNaN: true }), (glycol, volumeFraction) => {
        const coldest = numberOf(freezingTemperature({ glycol, volumeFraction }))
        expect(numberOf(strengthAgainstFreezing(glycol, coldest))).toBeCloseTo(volumeFraction, 9)
      }),
    )
  })

  it('vapor pressure rises, and leads back to its temperature', () => {
    fc.assert(
      fc.property(fc.double({ min: 274, max: 640, noNaN: true }), (temperature) => {
        const pressure = numberOf(vaporPressure(temperature))
        expect(numberOf(vaporPressure(temperature + 1))).toBeGreaterThan(pressure)
        expect(numberOf(boilingTemperature(pressure))).toBeCloseTo(temperature, 7)
      }),
    )
  })
})
