import type { Glycol } from './glycol.js'
import { glycolMassFraction } from './glycol-mass-fraction.js'
import type { Sized } from './sized.js'

interface GlycolMixture {
  readonly glycol: Glycol
  /** Part of glycol by volume, 0 to 1. */
  readonly volumeFraction: number
  /** K */
  readonly temperature: number
}

/**
 * Density of glycol in water.
 *
 * Melinder 2010, valid to 60 % by mass and to 100 C while the mixture is liquid; handbook tables differ up to 0.5 %.
 *
 * @returns kg/m3
 *
 * @example
 * glycolDensity({ glycol: 'propylene-glycol', volumeFraction: 0.3, temperature: 333.15 }).value // 1001.5
 */
export function glycolDensity({ glycol, volumeFraction, temperature }: GlycolMixture): Sized {
  const mass = glycolMassFraction(glycol, volumeFraction)
  const value = densityAt(glycol, mass.value, temperature)
  return {
    value,
    working: [...mass.working, { name: `density of ${glycol} in water`, value, unit: 'kg/m3' }],
    assumed: mass.assumed,
    valid: mass.valid && temperature <= 373.15 && temperature >= freezingPoint(glycol, mass.value),
  }
}

function densityAt(glycol: Glycol, massFraction: number, temperature: number): number {
  const { baseTemperature, baseFraction, density } = melinder[glycol]
  const [y, x] = [temperature - baseTemperature, massFraction - baseFraction]
  return density.reduce((sum, row, power) => sum + y ** power * polynomial(row, x), 0)
}

/** K */
function freezingPoint(glycol: Glycol, massFraction: number): number {
  const { baseFraction, freezing } = melinder[glycol]
  return polynomial(freezing, massFraction - baseFraction)
}

function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduce((sum, coefficient, power) => sum + coefficient * x ** power, 0)
}

interface Coefficients {
  readonly baseTemperature: number
  readonly baseFraction: number
  /** Rows by powers of temperature, columns by powers of mass fraction. */
  readonly density: readonly (readonly number[])[]
  readonly freezing: readonly number[]
}

/** Coefficients of Melinder 2010 as the open property library CoolProp carries them (MPG, MEG). */
const melinder: Readonly<Record<Glycol, Coefficients>> = {
  'propylene-glycol': {
    baseTemperature: 305.8583,
    baseFraction: 0.307031,
    density: [
      [1018, 76.04, -24.98, -155, -113.1, 234.2],
      [-0.5406, -0.945, 0.27, 2.829, -2.221],
      [-2.666e-3, 5.541e-3, -4.018e-3, -7.175e-3],
      [1.347e-5, -1.343e-5, 3.376e-5],
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
    freezing: [257.9, -80.8, -133.4, -72.93, 100.6, 11.4],
  },
}
