import type { Glycol } from '../glycol.js'

/** What the polynomials tell of a mixture; the viscosity as its natural logarithm. */
export type MelinderProperty = 'density' | 'heatCapacity' | 'conductivity' | 'logViscosity'

/**
 * A property of glycol in water by the polynomials of Melinder 2010: powers of the distances from a base temperature and a
 * base mass fraction. Published to 60 % by mass, from freezing to 100 C.
 *
 * @param massFraction 0 to 0.6
 * @param temperature K
 * @returns kg/m3, J/kg K, W/m K, or the logarithm of Pa s
 */
export function melinder(
  property: MelinderProperty,
  glycol: Glycol,
  massFraction: number,
  temperature: number,
): number {
  const { baseTemperature, baseFraction, [property]: rows } = coefficients[glycol]
  const [y, x] = [temperature - baseTemperature, massFraction - baseFraction]
  return rows.reduce((sum, row, power) => sum + y ** power * polynomial(row, x), 0)
}

/**
 * Temperature at which the first ice forms in glycol and water, by Melinder 2010.
 *
 * @param massFraction 0 to 0.6
 * @returns K
 */
export function melinderFreezing(glycol: Glycol, massFraction: number): number {
  const { baseFraction, freezing } = coefficients[glycol]
  return polynomial(freezing, massFraction - baseFraction)
}

/** Whether the polynomials are published for a mixture at a temperature. */
export function inMelinderRange(glycol: Glycol, massFraction: number, temperature: number): boolean {
  if (massFraction < 0 || massFraction > 0.6) return false
  return temperature <= 373.15 && temperature >= melinderFreezing(glycol, massFraction)
}

function polynomial(row: readonly number[], x: number): number {
  return row.reduce((sum, coefficient, power) => sum + coefficient * x ** power, 0)
}

/** Rows by powers of temperature, columns by powers of mass fraction. */
type Rows = readonly (readonly number[])[]

interface Coefficients extends Readonly<Record<MelinderProperty, Rows>> {
  readonly baseTemperature: number
  readonly baseFraction: number
  readonly freezing: readonly number[]
}

/** As the open property library CoolProp carries them (MPG, MEG). */
const coefficients: Readonly<Record<Glycol, Coefficients>> = {
  'propylene-glycol': {
    baseTemperature: 305.8583,
    baseFraction: 0.307031,
    density: [
      [1018, 76.04, -24.98, -155, -113.1, 234.2],
      [-0.5406, -0.945, 0.27, 2.829, -2.221],
      [-2.666e-3, 5.541e-3, -4.018e-3, -7.175e-3],
      [1.347e-5, -1.343e-5, 3.376e-5],
    ],
    heatCapacity: [
      [3882, -1304, -1598, 353.9, 5000, -4959],
      [2.699, 5.07, 0.9534, 31.02, -71.35],
      [-1.659e-3, -4.752e-3, 0.1167, -0.295],
      [-1.032e-5, 1.522e-4, -4.87e-4],
    ],
    conductivity: [
      [0.4513, -0.4795, 0.2076, -0.09083, -0.05952, 0.2104],
      [7.955e-4, -1.678e-3, 1.563e-3, -2.518e-3, -3.605e-3],
      [3.482e-8, 8.941e-6, -4.615e-5, 6.543e-5],
      [-5.966e-9, 1.493e-8, 9.897e-8],
    ],
    logViscosity: [
      [-6.224055, 3.328, 0.5453, -3.9, -1.587, 35.64],
      [-0.03045, -0.03984, -0.00086, 0.1054, 0.04475],
      [2.525e-4, 4.332e-4, -1.593e-4, -1.589e-3],
      [-1.399e-6, -1.86e-6, -4.465e-7],
    ],
    freezing: [259.9, -66.31, -109.4, -228.3, -340.9, 146.5],
  },
  'ethylene-glycol': {
    baseTemperature: 304.878,
    baseFraction: 0.308462,
    density: [
      [1034, 131.1, 0.749, -106.2, -96.23, 489.1],
      [-0.4781, -0.6876, 0.7855, 1.229, -7.211],
      [-2.692e-3, 4.805e-3, -3.995e-3, -1.153e-2],
      [4.725e-6, 1.69e-6, 4.982e-5],
    ],
    heatCapacity: [
      [3737, -1799, -993.3, 2610, 1537, -16180],
      [2.93, 10.46, 3.516, -1.189, -42.72],
      [-4.675e-3, -4.147e-2, 5.109e-2, -0.1643],
      [-1.389e-5, 1.847e-5, -7.138e-4],
    ],
    conductivity: [
      [0.472, -0.4286, 0.1747, 0.03017, -0.1322, 0.2678],
      [8.903e-4, -1.473e-3, 6.814e-4, -2.412e-3, 2.555e-3],
      [-1.058e-6, 1.059e-5, -3.612e-5, 4.004e-5],
      [-2.789e-9, -1.142e-8, 2.365e-8],
    ],
    logViscosity: [
      [-6.437255, 2.471, 0.03328, 1.659, 3.089, -18.65],
      [-0.0255, -0.01171, 0.01086, 0.003157, 0.01831],
      [1.782e-4, 1.052e-4, 1.051e-4, 4.063e-4],
      [-7.669e-7, -1.634e-6, -6.475e-6],
    ],
    freezing: [257.9, -80.8, -133.4, -72.93, 100.6, 11.4],
  },
}
