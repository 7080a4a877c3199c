import type { Sized } from './sized.js'

/**
 * Density of liquid water at 0.1 MPa.
 *
 * IAPWS SR6-08 (2011), valid from 253.15 K to 383.15 K. At the pressures of a heating system the value is off by about
 * 0.01 %.
 *
 * @param temperature K
 * @returns kg/m3
 *
 * @example
 * waterDensity(298.15).value // 997.047
 */
export function waterDensity(temperature: number): Sized {
  const alpha = reducing / (593 - temperature)
  const beta = reducing / (temperature - 232)
  const series = terms.reduce((sum, { a, n, b, m }) => sum + a * alpha ** n + b * beta ** m, leading)
  const value = pressure / (gasConstant * reducing * series)
  return {
    value,
    working: [{ name: 'density of water', value, unit: 'kg/m3' }],
    assumed: ['a pressure of 0.1 MPa'],
    valid: temperature >= 253.15 && temperature <= 383.15,
  }
}

const pressure = 1e5
const gasConstant = 461.51805
const reducing = 10
const leading = 1.93763157e-2

/** Coefficients 5 to 10 of the release; the first has no term in alpha. */
const terms = [
  { a: 0, n: 1, b: 5.78545292e-3, m: 1 },
  { a: 6.74458446e3, n: 4, b: -1.53195665e-2, m: 2 },
  { a: -2.22521604e5, n: 5, b: 3.11337859e-2, m: 3 },
  { a: 1.00231247e8, n: 7, b: -4.23546241e-2, m: 4 },
  { a: -1.63552118e9, n: 8, b: 3.38713507e-2, m: 5 },
  { a: 8.32299658e9, n: 9, b: -1.19946761e-2, m: 6 },
] as const
