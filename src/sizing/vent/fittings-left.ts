import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface Spare {
  /** m, as {@link ventLengthLeft} gives it. */
  readonly left: number
  /** m that the maker counts for one more fitting. */
  readonly each: number
}

/**
 * How many more fittings a vent can take before it is too long.
 *
 * @returns whole number; 0 where it is too long already
 *
 * @example
 * fittingsLeft({ left: 9, each: 1.524 }) // value 5
 */
export function fittingsLeft({ left, each }: Spare): Sizing {
  const why = firstImpossible(['length left', left, 'any'], ['length of one fitting', each, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const value = Math.max(0, Math.floor(left / each + roundingNoise))
  return sized({
    value,
    working: [
      { name: 'length left', value: left, unit: 'm' },
      { name: 'one fitting', value: each, unit: 'm' },
      { name: 'fittings that still fit', value, unit: '1' },
    ],
    assumed: [],
    valid: true,
  })
}

/** Five fittings into exactly five lengths, although feet turned into meters leave a last digit. */
const roundingNoise = 1e-9
