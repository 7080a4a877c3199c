import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { frictionFactor } from '../../src/sizing/friction-factor.js'
import { saturationPressure, saturationTemperature } from '../../src/sizing/saturation-pressure.js'
import { waterHeatCapacity } from '../../src/sizing/water-heat-capacity.js'

describe('heat capacity of water', () => {
  // IAPWS SR6-08, table 8, verification values.
  it.each([
    [260, 4300.17472],
    [298.15, 4181.44618],
    [375, 4217.74697],
  ])('at %s K: %s J/kg K', (temperature, expected) => {
    expect(Math.abs(waterHeatCapacity(temperature).value / expected - 1)).toBeLessThan(4e-9)
  })

  it('is told only where it was published', () => {
    expect([250, 300, 390].map((temperature) => waterHeatCapacity(temperature).valid)).toEqual([false, true, false])
  })
})

describe('saturation of water', () => {
  // IAPWS-95 by a property library.
  it.each([
    [40, 7384.94],
    [60, 19_946.4],
    [100, 101_418],
    [110, 143_379],
  ])('at %s C: %s Pa', (celsius, expected) => {
    expect(Math.abs(saturationPressure(celsius + 273.15) / expected - 1)).toBeLessThan(2e-4)
  })

  it('comes back from its pressure', () => {
    fc.assert(
      fc.property(fc.double({ min: 274, max: 640, noNaN: true }), (temperature) => {
        expect(saturationTemperature(saturationPressure(temperature))).toBeCloseTo(temperature, 7)
      }),
    )
  })
})

describe('friction factor', () => {
  // Published test values of an open library of fluid formulas; exact Colebrook and White, and 64/Re.
  it.each([
    [128, 0, 0.5],
    [4000, 0, 0.0399070141],
    [4000, 0.001, 0.0409103899],
    [100_000, 0, 0.0179897731],
    [100_000, 0.0001, 0.0185138661],
    [1_000_000, 0.01, 0.0379647419],
  ])('at Re %s and roughness %s: %s', (reynolds, roughness, expected) => {
    expect(Math.abs(frictionFactor(reynolds, roughness) / expected - 1)).toBeLessThan(1e-7)
  })

  it('solves the equation of Colebrook and White', () => {
    const reynolds = fc.double({ min: 4000, max: 1e8, noNaN: true })
    fc.assert(
      fc.property(reynolds, fc.double({ min: 0, max: 0.05, noNaN: true }), (re, roughness) => {
        const x = 1 / Math.sqrt(frictionFactor(re, roughness))
        expect(x + 2 * Math.log10(roughness / 3.7 + (2.51 * x) / re)).toBeCloseTo(0, 9)
      }),
    )
  })

  it('lets the pressure loss grow with the flow, through the blend as well', () => {
    const reynolds = fc.double({ min: 1, max: 20_000, noNaN: true })
    fc.assert(
      fc.property(reynolds, reynolds, (one, other) => {
        const loss = (re: number): number => frictionFactor(re, 0.0001) * re ** 2
        expect(loss(Math.max(one, other))).toBeGreaterThanOrEqual(loss(Math.min(one, other)) * (1 - 1e-12))
      }),
    )
  })
})
