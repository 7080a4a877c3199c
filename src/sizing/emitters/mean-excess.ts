import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/** Which mean of the water temperatures drives an emitter; the better of the two depends on the product. */
export type Mean = 'logarithmic' | 'arithmetic'

interface WaterInRoom {
  /** K */
  readonly supply: number
  /** K */
  readonly return: number
  /** K, of the air that the emitter warms. */
  readonly air: number
  readonly mean: Mean
}

/**
 * How far the water of an emitter lies above the air on the whole.
 *
 * The arithmetic mean is close while the return keeps 0.7 of the excess of the supply; below that it promises too much.
 *
 * @returns K
 *
 * @example
 * meanExcess({ supply: 348.15, return: 338.15, air: 293.15, mean: 'logarithmic' }) // value 49.833
 */
export function meanExcess({ supply, return: back, air, mean }: WaterInRoom): Sizing {
  const why = firstImpossible(
    ['supply temperature', supply, 'above zero'],
    ['return temperature', back, 'above zero'],
    ['air temperature', air, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  if (back > supply) return cannotSize(`Water cannot return at ${back} K, warmer than its supply at ${supply} K.`)
  if (back <= air) return cannotSize(`Water at ${back} K cannot heat air at ${air} K.`)
  const [warm, cool] = [supply - air, back - air]
  const value = mean === 'logarithmic' ? logMean(warm, cool) : (warm + cool) / 2
  return sized({
    value,
    working: [
      { name: 'supply above the air', value: warm, unit: 'K' },
      { name: 'return above the air', value: cool, unit: 'K' },
      { name: `${mean} mean excess`, value, unit: 'K' },
    ],
    assumed: [],
    valid: mean === 'logarithmic' || cool / warm >= 0.7,
  })
}

interface Exchanger {
  /** K, of the warmer stream as it comes and as it goes. */
  readonly hotIn: number
  readonly hotOut: number
  /** K, of the cooler stream as it comes and as it goes. */
  readonly coldIn: number
  readonly coldOut: number
}

/**
 * Logarithmic mean difference between two streams that pass each other in opposite directions.
 *
 * @returns K
 *
 * @example
 * logMeanDifference({ hotIn: 373.15, hotOut: 333.15, coldIn: 303.15, coldOut: 313.35 }) // value 43.2
 */
export function logMeanDifference({ hotIn, hotOut, coldIn, coldOut }: Exchanger): Sizing {
  const [one, other] = [hotIn - coldOut, hotOut - coldIn]
  const why = firstImpossible(
    ['difference where the hot stream enters', one, 'above zero'],
    ['difference where the hot stream leaves', other, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const value = logMean(one, other)
  return sized({
    value,
    working: [
      { name: 'difference where the hot stream enters', value: one, unit: 'K' },
      { name: 'difference where the hot stream leaves', value: other, unit: 'K' },
      { name: 'logarithmic mean difference', value, unit: 'K' },
    ],
    assumed: ['opposite directions'],
    valid: true,
  })
}

/** Both above zero. Nearly equal ones lose their digits in the quotient, and their plain mean is exact to all that are left. */
export function logMean(one: number, other: number): number {
  const apart = (one - other) / other
  return Math.abs(apart) < 1e-6 ? (one + other) / 2 : (one - other) / Math.log1p(apart)
}
