import type { Sized } from '../sized.js'

/**
 * Thermal conductivity of liquid water at 0.1 MPa.
 *
 * IAPWS SR6-08 (2011), valid from 273.15 K to 383.15 K.
 *
 * @param temperature K
 * @returns W/m K
 *
 * @example
 * waterConductivity(333.15).value // 0.651
 */
export function waterConductivity(temperature: number): Sized {
  const reduced = temperature / 300
  const value = terms.reduce((sum, [factor, power]) => sum + factor * reduced ** power, 0)
  return {
    value,
    working: [
      { name: 'temperature over 300 K', value: reduced, unit: '1' },
      { name: 'conductivity of water', value, unit: 'W/m K' },
    ],
    assumed: ['a pressure of 0.1 MPa'],
    valid: temperature >= 273.15 && temperature <= 383.15,
  }
}

const terms = [
  [1.663, -1.15],
  [-1.7781, -3.4],
  [1.1567, -6],
  [-0.432115, -7.6],
] as const
