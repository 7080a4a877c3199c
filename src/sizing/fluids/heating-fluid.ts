import { firstImpossible } from '../first-impossible.js'
import type { Glycol } from '../glycol.js'

/** What fills a heating system: water, or glycol in water told by volume, as refractometers and labels tell it. */
export type HeatingFluid = 'water' | GlycolInWater

/** Glycol in water. */
export interface GlycolInWater {
  readonly glycol: Glycol
  /** Part of glycol by volume, 0 to 1. */
  readonly volumeFraction: number
}

/** A fluid at one temperature. */
export interface FluidState {
  readonly fluid: HeatingFluid
  /** K */
  readonly temperature: number
}

/** Why a fluid cannot be, or nothing. */
export function impossibleFluid({ fluid, temperature }: FluidState): string | undefined {
  const warmth = firstImpossible(['temperature of the fluid', temperature, 'above zero'])
  if (warmth !== undefined || fluid === 'water') return warmth
  return firstImpossible(['part of glycol by volume', fluid.volumeFraction, 'a share'])
}
