import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface Pipe {
  /** m */
  readonly insideDiameter: number
  /** m */
  readonly length: number
}

/**
 * What a pipe holds.
 *
 * @returns m3
 *
 * @example
 * pipeVolume({ insideDiameter: 0.03279, length: 0.3048 }) // value 0.0002574, 0.068 gal for a foot of 1-1/4 in. type M
 */
export function pipeVolume({ insideDiameter, length }: Pipe): Sizing {
  const why = firstImpossible(
    ['inside diameter of the pipe', insideDiameter, 'above zero'],
    ['length of the pipe', length, 'zero or more'],
  )
  if (why !== undefined) return cannotSize(why)
  const bore = (Math.PI / 4) * insideDiameter ** 2
  return sized({
    value: bore * length,
    working: [
      { name: 'open area of the pipe', value: bore, unit: 'm2' },
      { name: 'length', value: length, unit: 'm' },
      { name: 'content of the pipe', value: bore * length, unit: 'm3' },
    ],
    assumed: [],
    valid: true,
  })
}
