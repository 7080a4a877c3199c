import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface VentClass {
  /** K, highest flue temperature for which the vent pipe is listed. */
  readonly highest: number
  /** K by which the flue lies above the water that enters the boiler. */
  readonly approach: number
}

/**
 * Hottest water with which a vent pipe stays within its class when the boiler itself has no limit in the flue.
 *
 * @returns K
 *
 * @example
 * hottestWaterForVent({ highest: 338.15, approach: 16.67 }) // value 321.48, 119 F
 */
export function hottestWaterForVent({ highest, approach }: VentClass): Sizing {
  const why = firstImpossible(
    ['highest flue temperature', highest, 'above zero'],
    ['approach', approach, 'zero or more'],
  )
  if (why !== undefined) return cannotSize(why)
  const value = highest - approach
  return sized({
    value,
    working: [
      { name: 'highest flue temperature of the pipe', value: highest, unit: 'K' },
      { name: 'flue above the water', value: approach, unit: 'K' },
      { name: 'hottest water', value, unit: 'K' },
    ],
    assumed: ['no limit built into the boiler'],
    valid: value > 0,
  })
}
