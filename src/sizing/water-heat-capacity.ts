import type { Sized } from './sized.js'

/**
 * Heat that warms a kilogram of liquid water by a degree, at 0.1 MPa.
 *
 * IAPWS SR6-08 (2011), valid from 253.15 K to 383.15 K. At the pressures of a heating system the value is off by about
 * 0.02 %.
 *
 * @param temperature K
 * @returns J/kg K
 *
 * @example
 * waterHeatCapacity(298.15).value // 4181.4
 */
export function waterHeatCapacity(temperature: number): Sized {
  const alpha = reducing / (593 - temperature)
  const beta = reducing / (temperature - 232)
  const series = curvature(alphaTerms, alpha) + curvature(betaTerms, beta)
  const value = -gasConstant * (leading + (temperature / reducing) * series)
  return {
    value,
    working: [{ name: 'heat capacity of water', value, unit: 'J/kg K' }],
    assumed: ['a pressure of 0.1 MPa'],
    valid: temperature >= 253.15 && temperature <= 383.15,
  }
}

type Term = readonly [coefficient: number, power: number]

function curvature(terms: readonly Term[], x: number): number {
  return terms.reduce((sum, [coefficient, power]) => sum + power * (power + 1) * coefficient * x ** (power + 2), 0)
}

const gasConstant = 461.51805
const reducing = 10

/** Coefficients c3, a1 to a3 and b1 to b4 of the release. */
const leading = -8.983025854
const alphaTerms: readonly Term[] = [
  [-1.661470539e5, 4],
  [2.70878164e6, 5],
  [-1.557191544e8, 7],
]
const betaTerms: readonly Term[] = [
  [-8.237426256e-1, 2],
  [1.908956353, 3],
  [-2.017597384, 4],
  [8.546361348e-1, 5],
]
