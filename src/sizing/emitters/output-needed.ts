import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { emitterOutput } from './emitter-output.js'
import type { EmitterRating } from './emitter-rating.js'

interface WantedOutput {
  /** W */
  readonly load: number
  /** What each takes off the printed output: other temperatures, a cover, a connection; 0.908 for 9.2 %. */
  readonly factors: readonly number[]
}

/**
 * Output to look for in a catalog, so that a load is met after every correction.
 *
 * @returns W at the rating of the catalog
 *
 * @example
 * catalogOutput({ load: 2000, factors: [0.908, 0.98] }) // value 2247.6
 */
export function catalogOutput({ load, factors }: WantedOutput): Sizing {
  const why = firstImpossible(
    ['load', load, 'zero or more'],
    ...factors.map((factor, index) => [`correction ${index + 1}`, factor, 'above zero'] as const),
  )
  if (why !== undefined) return cannotSize(why)
  const product = factors.reduce((all, factor) => all * factor, 1)
  const value = load / product
  return sized({
    value,
    working: [
      { name: 'load', value: load, unit: 'W' },
      ...factors.map((factor, index) => ({ name: `correction ${index + 1}`, value: factor, unit: '1' })),
      { name: 'output in the catalog', value, unit: 'W' },
    ],
    assumed: [],
    valid: true,
  })
}

interface WantedLength {
  /** W */
  readonly load: number
  /** Of one meter of the element. */
  readonly meter: EmitterRating
  /** K by which the mean of the water lies above the air. */
  readonly excess: number
  /** Part of the output that reaches the room. */
  readonly kept: number
}

/**
 * Length of element that carries a load; what is there already taken off, the length to add.
 *
 * @returns m
 *
 * @example
 * // 5,650 Btu/h with water at 130 F and air at 65 F, 580 Btu/h a foot at 180 F: value 6.6, or 21.7 ft where 19 ft stand
 * lengthForLoad({ load: 1655.9, meter, excess: 36.11, kept: 1 })
 */
export function lengthForLoad({ load, meter, excess, kept }: WantedLength): Sizing {
  const why = firstImpossible(['load', load, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const each = emitterOutput({ rating: meter, excess, kept })
  if (!each.sized) return each
  if (each.value === 0) return cannotSize('The element gives nothing: no length is enough.')
  const value = load / each.value
  return sized({
    value,
    working: [
      ...each.working.slice(0, -1),
      { name: 'output of a meter', value: each.value, unit: 'W' },
      { name: 'length for the load', value, unit: 'm' },
    ],
    assumed: each.assumed,
    valid: each.valid,
  })
}
