import { type ThreeK, type TwoK } from '../../tables/index.js'
import { si } from '../../units/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface TwoKCase {
  /** {@link twoKOf} lists them. */
  readonly constants: TwoK
  readonly reynolds: number
  /** m */
  readonly insideDiameter: number
}

/**
 * Resistance coefficient of a fitting by the two-K method of Hooper, which holds in slow, thick flow as well.
 *
 * @returns 1
 *
 * @example
 * twoKResistance({ constants: { k1: 900, kInfinite: 4 }, reynolds: 10_000, insideDiameter: 0.0508 }) // value 6.09
 */
export function twoKResistance({ constants, reynolds, insideDiameter }: TwoKCase): Sizing {
  const { k1, kInfinite } = constants
  const why = firstImpossible(
    ['first constant of the fitting', k1, 'zero or more'],
    ['second constant of the fitting', kInfinite, 'zero or more'],
    ['Reynolds number', reynolds, 'above zero'],
    ['inside diameter of the pipe', insideDiameter, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const [slow, fast] = [k1 / reynolds, kInfinite * (1 + inch / insideDiameter)]
  return parts(slow, fast, 'resistance by the two-K method')
}

interface ThreeKCase {
  /** {@link threeKOf} lists them. */
  readonly constants: ThreeK
  readonly reynolds: number
  /** Nominal inches. */
  readonly size: number
}

/**
 * Resistance coefficient of a fitting by the three-K method of Darby, which follows the size of the pipe more closely.
 *
 * @returns 1
 *
 * @example
 * threeKResistance({ constants: { k1: 950, ki: 0.25, kd: 4 }, reynolds: 10_000, size: 12 }) // value 0.8195
 */
export function threeKResistance({ constants, reynolds, size }: ThreeKCase): Sizing {
  const { k1, ki, kd } = constants
  const why = firstImpossible(
    ['first constant of the fitting', k1, 'zero or more'],
    ['second constant of the fitting', ki, 'zero or more'],
    ['third constant of the fitting', kd, 'zero or more'],
    ['Reynolds number', reynolds, 'above zero'],
    ['size of the pipe', size, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const [slow, fast] = [k1 / reynolds, ki * (1 + kd / size ** 0.3)]
  return parts(slow, fast, 'resistance by the three-K method')
}

function parts(slow: number, fast: number, name: string): Sizing {
  return sized({
    value: slow + fast,
    working: [
      { name: 'part that fades with the Reynolds number', value: slow, unit: '1' },
      { name: 'part of the size', value: fast, unit: '1' },
      { name, value: slow + fast, unit: '1' },
    ],
    assumed: [],
    valid: true,
  })
}

const inch = si('length', '1 in')
