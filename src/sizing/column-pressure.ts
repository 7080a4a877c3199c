import type { Sized } from './sized.js'

interface Column {
  /** m; below zero when the top lies lower than the gauge. */
  readonly height: number
  /** kg/m3 */
  readonly density: number
}

/**
 * Pressure at the foot of a standing column of water or mixture.
 *
 * @returns Pa, gauge
 *
 * @example
 * columnPressure({ height: 7.7724, density: 999.7 }).value // 76198, or 11.05 psi
 */
export function columnPressure({ height, density }: Column): Sized {
  const value = density * standardGravity * height
  return {
    value,
    working: [
      { name: 'height', value: height, unit: 'm' },
      { name: 'density', value: density, unit: 'kg/m3' },
      { name: 'pressure of the column', value, unit: 'Pa' },
    ],
    assumed: ['standard gravity, 9.80665 m/s2'],
    valid: density > 0,
  }
}

const standardGravity = 9.80665
