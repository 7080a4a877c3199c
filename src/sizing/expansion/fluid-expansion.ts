import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import type { HeatingFluid } from '../fluids/heating-fluid.js'
import { densityOf } from './density-of.js'

interface Heating {
  readonly fluid: HeatingFluid
  /** K, as it is filled in. */
  readonly cold: number
  /** K, the highest mean temperature. */
  readonly hot: number
}

/**
 * How much a fluid swells from cold to hot: the ratio of its densities, less one. A mixture with glycol is reckoned by the
 * densities of the mixture, never as water times a factor.
 *
 * @returns share of the cold volume; below zero where it shrinks
 *
 * @example
 * fluidExpansion({ fluid: 'water', cold: 283.15, hot: 349.82 }) // value 0.0266, 50 F to 170 F
 */
export function fluidExpansion({ fluid, cold, hot }: Heating): Sizing {
  const why = firstImpossible(['cold temperature', cold, 'above zero'], ['hot temperature', hot, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const strength = fluid === 'water' ? 0 : fluid.volumeFraction
  const tooStrong = firstImpossible(['part of glycol', strength, 'a share'])
  if (tooStrong !== undefined) return cannotSize(tooStrong)
  const [before, after] = [densityOf(fluid, cold), densityOf(fluid, hot)]
  if (!(before.value > 0) || !(after.value > 0))
    return cannotSize(`Between ${cold} K and ${hot} K the fluid has no density by the published formula.`)
  const value = before.value / after.value - 1
  return sized({
    value,
    working: [
      { name: 'density cold', value: before.value, unit: 'kg/m3' },
      { name: 'density hot', value: after.value, unit: 'kg/m3' },
      { name: 'swelling', value, unit: '1' },
    ],
    assumed: [...new Set([...before.assumed, ...after.assumed])],
    valid: before.valid && after.valid,
  })
}
