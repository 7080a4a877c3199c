import { firstImpossible } from '../first-impossible.js'
import { interpolate } from '../interpolate.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { type ResetDesign, resetSupply } from './outdoor-reset.js'

/** A point that is set in a controller. */
export interface CurvePoint {
  /** K */
  readonly outdoor: number
  /** K */
  readonly supply: number
}

/**
 * Supply temperature that a controller asks for: straight lines between its points, level beyond them.
 *
 * @param outdoor K
 * @returns K
 *
 * @example
 * // 180 F at 0 F and 70 F at 70 F ask 132.9 F at 30 F
 * supplyOnCurve([{ outdoor: 255.37, supply: 355.37 }, { outdoor: 294.26, supply: 294.26 }], 272.04) // value 329.2
 */
export function supplyOnCurve(points: readonly CurvePoint[], outdoor: number): Sizing {
  const why = firstImpossible(
    ['outdoor temperature', outdoor, 'above zero'],
    ...points.flatMap((point) => [
      ['outdoor temperature of a point', point.outdoor, 'above zero'] as const,
      ['supply temperature of a point', point.supply, 'above zero'] as const,
    ]),
  )
  if (why !== undefined) return cannotSize(why)
  if (points.length === 0) return cannotSize('A curve without points asks for nothing.')
  const inOrder = points
    .map((point) => [point.outdoor, point.supply] as const)
    .toSorted(([one], [other]) => one - other)
  const { value } = interpolate(inOrder, outdoor)
  return sized({
    value,
    working: [
      { name: 'outdoor temperature', value: outdoor, unit: 'K' },
      { name: 'supply that the curve asks for', value, unit: 'K' },
    ],
    assumed: ['straight lines between the points'],
    valid: true,
  })
}

interface SetCurve {
  readonly points: readonly CurvePoint[]
  readonly design: ResetDesign
}

/**
 * How far the supply of a controller lies above what the emitters need; below zero rooms stay cold.
 *
 * @param outdoor K
 * @returns K
 */
export function curveGap({ points, design }: SetCurve, outdoor: number): Sizing {
  const asked = supplyOnCurve(points, outdoor)
  if (!asked.sized) return asked
  const needed = resetSupply(design, outdoor)
  if (!needed.sized) return needed
  const value = asked.value - needed.value
  return sized({
    value,
    working: [
      ...asked.working,
      { name: 'supply that the emitters need', value: needed.value, unit: 'K' },
      { name: 'gap', value, unit: 'K' },
    ],
    assumed: [...asked.assumed, ...needed.assumed],
    valid: needed.valid,
  })
}

/**
 * Widest shortfall of a controller's curve between the design day and the balance temperature. A straight line between the end
 * points misses up to 4 K in the middle of the season with radiators: what they need is bowed.
 *
 * @returns K, 0 where the curve is always warm enough
 */
export function curveShortfall(curve: SetCurve): Sizing {
  const { designOutdoor, balance } = curve.design
  const outdoors = Array.from({ length: 101 }, (_, step) => designOutdoor + ((balance - designOutdoor) * step) / 100)
  const gaps = outdoors.map((outdoor) => ({ outdoor, gap: curveGap(curve, outdoor) }))
  const worst = gaps.reduce<Worst>(
    (most, { outdoor, gap }) => (gap.sized && -gap.value > most.value ? { outdoor, value: -gap.value } : most),
    { outdoor: designOutdoor, value: 0 },
  )
  for (const { gap } of gaps) if (!gap.sized) return gap
  return sized({
    value: worst.value,
    working: [
      { name: 'outdoor temperature', value: worst.outdoor, unit: 'K' },
      { name: 'widest shortfall', value: worst.value, unit: 'K' },
    ],
    assumed: ['looked at in a hundred steps'],
    valid: true,
  })
}

interface Worst {
  readonly outdoor: number
  readonly value: number
}
