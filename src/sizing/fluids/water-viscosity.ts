import type { Sized } from '../sized.js'

/**
 * Dynamic viscosity of liquid water at 0.1 MPa.
 *
 * IAPWS SR6-08 (2011), valid from 253.15 K to 383.15 K.
 *
 * @param temperature K
 * @returns Pa s
 *
 * @example
 * waterViscosity(333.15).value // 0.000466
 */
export function waterViscosity(temperature: number): Sized {
  const reduced = temperature / 300
  const value = 1e-6 * terms.reduce((sum, [factor, power]) => sum + factor * reduced ** power, 0)
  return {
    value,
    working: [
      { name: 'temperature over 300 K', value: reduced, unit: '1' },
      { name: 'viscosity of water', value, unit: 'Pa s' },
    ],
    assumed: ['a pressure of 0.1 MPa'],
    valid: temperature >= 253.15 && temperature <= 383.15,
  }
}

const terms = [
  [280.68, -1.9],
  [511.45, -7.7],
  [61.131, -19.6],
  [0.45903, -40],
] as const
