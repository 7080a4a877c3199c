import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface LoadedTransformer {
  /** VA */
  readonly load: number
  /** VA, from the nameplate. */
  readonly rating: number
}

/**
 * Share of its rating that a transformer delivers; up to 80 % is common practice.
 *
 * @returns 1
 *
 * @example
 * transformerUse({ load: 38.04, rating: 50 }) // value 0.76
 */
export function transformerUse({ load, rating }: LoadedTransformer): Sizing {
  const why = firstImpossible(
    ['load of the transformer', load, 'zero or more'],
    ['rating of the transformer', rating, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const value = load / rating
  return sized({
    value,
    working: [
      { name: 'load', value: load, unit: 'VA' },
      { name: 'rating', value: rating, unit: 'VA' },
      { name: 'share of the rating', value, unit: '1' },
    ],
    assumed: [],
    valid: true,
  })
}

/**
 * Smallest rating that a load asks for, to be told before a transformer is bought.
 *
 * @returns VA
 *
 * @example
 * smallestTransformer({ load: 49.72, share: 0.8 }) // value 62.2
 */
export function smallestTransformer({ load, share }: { readonly load: number; readonly share: number }): Sizing {
  const why = firstImpossible(
    ['load of the transformer', load, 'zero or more'],
    ['share of its rating', share, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  return sized({
    value: load / share,
    working: [
      { name: 'load', value: load, unit: 'VA' },
      { name: 'share of the rating', value: share, unit: '1' },
      { name: 'smallest rating', value: load / share, unit: 'VA' },
    ],
    assumed: [],
    valid: share <= 1,
  })
}
