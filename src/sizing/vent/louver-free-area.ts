import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface Louver {
  /** m2, the hole in the wall. */
  readonly grossArea: number
  /** `none` is an open hole with wide mesh at most. */
  readonly louver: 'none' | 'metal' | 'wood'
}

/**
 * Free area of an opening behind a louver whose maker states none.
 *
 * Fuel gas code, IFGC 304.10 (recalled): 75 % for metal, 25 % for wood.
 *
 * @returns m2
 *
 * @example
 * louverFreeArea({ grossArea: 0.1, louver: 'wood' }) // value 0.025
 */
export function louverFreeArea({ grossArea, louver }: Louver): Sizing {
  const why = firstImpossible(['area of the opening', grossArea, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const share = freeShare[louver]
  return sized({
    value: grossArea * share,
    working: [
      { name: 'area of the opening', value: grossArea, unit: 'm2' },
      { name: 'free part', value: share, unit: '1' },
      { name: 'free area', value: grossArea * share, unit: 'm2' },
    ],
    assumed: louver === 'none' ? [] : [`a ${louver} louver without a free area stated by its maker`],
    valid: true,
  })
}

const freeShare = { none: 1, metal: 0.75, wood: 0.25 } as const
