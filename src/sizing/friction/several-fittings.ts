import {
  type CopperFitting,
  copperFittingLength,
  fittingResistance,
  type FittingList,
  type ResistingFitting,
} from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import type { Step } from '../sized.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface Several<Kind extends string> {
  readonly fitting: Kind
  readonly count: number
}

interface CopperFittings {
  /** Nominal inches. */
  readonly size: number
  readonly list: FittingList
  readonly fittings: readonly Several<CopperFitting>[]
}

/**
 * Length that wrought copper fittings of one size count for.
 *
 * @returns m
 *
 * @example
 * fittingsLength({ size: 1, list: 'trade', fittings: [{ fitting: 'elbow90', count: 6 }] }) // value 4.57, or 15 ft
 */
export function fittingsLength({ size, list, fittings }: CopperFittings): Sizing {
  const why = impossibleCount(fittings)
  if (why !== undefined) return cannotSize(why)
  const unlisted = fittings.find(({ fitting }) => copperFittingLength({ list, fitting, size }) === undefined)
  if (unlisted !== undefined) return cannotSize(`No length is listed for ${unlisted.fitting} of size ${size}.`)
  return total(
    fittings.map(({ fitting, count }) => ({
      name: `${count} ${fitting}`,
      value: count * (copperFittingLength({ list, fitting, size }) ?? 0),
      unit: 'm',
    })),
    { name: 'equivalent length', unit: 'm' },
    ['wrought copper; cast fittings count two to four times as much'],
  )
}

/**
 * Sum of the typical resistance coefficients of fittings in pipe of one bore.
 *
 * @returns 1
 *
 * @example
 * fittingsResistance([{ fitting: 'elbow90', count: 4 }, { fitting: 'tee-branch', count: 1 }]) // value 4
 */
export function fittingsResistance(fittings: readonly Several<ResistingFitting>[]): Sizing {
  const why = impossibleCount(fittings)
  if (why !== undefined) return cannotSize(why)
  return total(
    fittings.map(({ fitting, count }) => ({
      name: `${count} ${fitting}`,
      value: count * fittingResistance(fitting),
      unit: '1',
    })),
    { name: 'resistance of the fittings', unit: '1' },
    ['typical coefficients, whatever the size'],
  )
}

function impossibleCount(fittings: readonly Several<string>[]): string | undefined {
  return firstImpossible(
    ...fittings.map(({ fitting, count }) => [`number of ${fitting}`, count, 'zero or more'] as const),
  )
}

function total(terms: readonly Step[], sum: Omit<Step, 'value'>, assumed: readonly string[]): Sizing {
  const value = terms.reduce((before, term) => before + term.value, 0)
  return sized({ value, working: [...terms, { ...sum, value }], assumed, valid: true })
}
