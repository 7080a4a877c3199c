import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { whyNoRating } from './emitter-output.js'
import type { EmitterRating } from './emitter-rating.js'

interface LoadedEmitter {
  readonly rating: EmitterRating
  /** W */
  readonly load: number
  /** K, air that enters the emitter: the room for radiators, what lies on the floor for baseboard. */
  readonly air: number
  /** Part of the output that reaches the room: 1 in the open, less behind a cover. */
  readonly kept: number
}

/**
 * Mean water temperature at which an emitter carries a load.
 *
 * @returns K
 *
 * @example
 * // 54 ft2 EDR for 4,820 Btu/h in a room at 70 F
 * requiredWater({ rating: castIronRadiator(5.017), load: 1412.6, air: 294.26, kept: 1 }) // value 331.5, or 137.1 F
 */
export function requiredWater({ rating, load, air, kept }: LoadedEmitter): Sizing {
  const why =
    whyNoRating(rating) ??
    firstImpossible(
      ['load', load, 'zero or more'],
      ['air temperature', air, 'above zero'],
      ['part of the output kept', kept, 'a share'],
    )
  if (why !== undefined) return cannotSize(why)
  if (load > 0 && rating.output * kept === 0) return cannotSize(`An emitter without output cannot carry ${load} W.`)
  const ratio = load === 0 ? 0 : load / (rating.output * kept)
  const excess = rating.excess * ratio ** (1 / rating.exponent)
  const value = air + excess
  return sized({
    value,
    working: [
      { name: 'load over the rated output', value: ratio, unit: '1' },
      { name: 'excess of the water over the air', value: excess, unit: 'K' },
      { name: 'mean water temperature', value, unit: 'K' },
    ],
    assumed: [],
    valid: excess <= 2 * rating.excess && rating.exponent <= 1.6,
  })
}
