import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/** Temperatures at a mixing valve; K. */
export interface Mixing {
  readonly hot: number
  readonly cold: number
  readonly mixed: number
}

interface StoredWater extends Mixing {
  /** m3 */
  readonly volume: number
  /** Part that leaves the tank before it turns cool; common practice 0.7 to 0.9. */
  readonly usable: number
}

/**
 * Part of hot water in mixed water.
 *
 * @returns 0 to 1
 *
 * @example
 * hotShare({ hot: 333.15, cold: 280.37, mixed: 322.04 }) // value 0.7895, for 140 F to 120 F with 45 F
 */
export function hotShare({ hot, cold, mixed }: Mixing): Sizing {
  const why = whyNotMixed({ hot, cold, mixed })
  if (why !== undefined) return cannotSize(why)
  const value = (mixed - cold) / (hot - cold)
  return sized({
    value,
    working: [
      { name: 'rise from cold to mixed', value: mixed - cold, unit: 'K' },
      { name: 'rise from cold to hot', value: hot - cold, unit: 'K' },
      { name: 'part of hot water', value, unit: '1' },
    ],
    assumed: [],
    valid: true,
  })
}

/**
 * Mixed water that a full tank gives before its source helps.
 *
 * @returns m3
 *
 * @example
 * mixedVolume({ volume: 0.1703, usable: 0.8, hot: 333.15, cold: 280.37, mixed: 322.04 }) // value 0.1726, 45.6 gal
 */
export function mixedVolume({ volume, usable, ...temperatures }: StoredWater): Sizing {
  const why =
    firstImpossible(['volume of the tank', volume, 'zero or more'], ['usable part of the tank', usable, 'a share']) ??
    whyNotMixed(temperatures)
  if (why !== undefined) return cannotSize(why)
  const { hot, cold, mixed } = temperatures
  const value = (volume * usable * (hot - cold)) / (mixed - cold)
  return sized({
    value,
    working: [
      { name: 'usable volume', value: volume * usable, unit: 'm3' },
      { name: 'rise from cold to hot', value: hot - cold, unit: 'K' },
      { name: 'rise from cold to mixed', value: mixed - cold, unit: 'K' },
      { name: 'mixed volume', value, unit: 'm3' },
    ],
    assumed: [],
    valid: true,
  })
}

/** Why no valve can mix to the temperature, if it cannot. */
export function whyNotMixed({ hot, cold, mixed }: Mixing): string | undefined {
  const why = firstImpossible(
    ['hot water', hot, 'above zero'],
    ['cold water', cold, 'above zero'],
    ['mixed water', mixed, 'above zero'],
  )
  if (why !== undefined) return why
  if (mixed <= cold) return `Mixed water at ${mixed} K is no warmer than the cold water at ${cold} K.`
  return mixed > hot ? `Water at ${hot} K cannot be mixed to ${mixed} K.` : undefined
}
