import { inMelinderRange, melinder } from './fluids/melinder.js'
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
 * Melinder 2010, valid to 60 % by mass and to 100 C while the mixture is liquid; handbook tables of inhibited glycols are up to 0.65 % heavier.
 *
 * @returns kg/m3
 *
 * @example
 * glycolDensity({ glycol: 'propylene-glycol', volumeFraction: 0.3, temperature: 333.15 }).value // 1001.5
 */
export function glycolDensity({ glycol, volumeFraction, temperature }: GlycolMixture): Sized {
  const mass = glycolMassFraction(glycol, volumeFraction)
  const value = melinder('density', glycol, mass.value, temperature)
  return {
    value,
    working: [...mass.working, { name: `density of ${glycol} in water`, value, unit: 'kg/m3' }],
    assumed: mass.assumed,
    valid: mass.valid && inMelinderRange(glycol, mass.value, temperature),
  }
}
