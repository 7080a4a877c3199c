import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface HottestFlue {
  /** K, hottest water that enters the boiler in any state, or where that is not known the hottest that leaves it. */
  readonly hottestWater: number
  /** K by which the flue lies above the water that enters; common practice: 8 to 17 K at full fire. */
  readonly approach: number
  /** K at which a limit built into the boiler stops it, if it has one. */
  readonly builtInLimit?: number | undefined
}

/**
 * Highest temperature that the flue gas reaches in any state: the one by which the class of the vent pipe is judged.
 *
 * @returns K
 *
 * @example
 * highestFlueTemperature({ hottestWater: 355.37, approach: 16.67, builtInLimit: 338.15 }) // value 338.15
 */
export function highestFlueTemperature({ hottestWater, approach, builtInLimit }: HottestFlue): Sizing {
  const why = firstImpossible(
    ['hottest water', hottestWater, 'above zero'],
    ['approach', approach, 'zero or more'],
    ['built-in limit', builtInLimit ?? hottestWater, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const unlimited = hottestWater + approach
  const value = Math.min(unlimited, builtInLimit ?? unlimited)
  return sized({
    value,
    working: [
      { name: 'hottest water', value: hottestWater, unit: 'K' },
      { name: 'flue above the water', value: approach, unit: 'K' },
      { name: 'flue without a limit', value: unlimited, unit: 'K' },
      ...(builtInLimit === undefined ? [] : [{ name: 'built-in limit', value: builtInLimit, unit: 'K' }]),
      { name: 'highest flue temperature', value, unit: 'K' },
    ],
    assumed: builtInLimit === undefined ? ['no limit built into the boiler'] : [],
    valid: true,
  })
}
