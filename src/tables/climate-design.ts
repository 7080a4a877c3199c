import * as z from 'zod/mini'
import packed from './climate-design.generated.json' with { type: 'json' }
import { writtenAmount } from './written-amount.js'

/** Whose outdoor design temperature. */
export type DesignList = 'ashrae-2009' | 'ashrae-2013' | 'din-2003' | 'din-2020' | 'energy-star-2019'

/** A published outdoor design temperature. */
export interface OutdoorDesign {
  /** WMO number, or a national code with its country before it: `DE-10178`, a postal code. */
  readonly station: string
  readonly region: string
  readonly list: DesignList
  /** Whether the figure was read in its list or recalled. */
  readonly basis: 'read' | 'recalled'
  /** Share of the hours of a year that are warmer, 0.99 or 0.996; lists that do not count hours have none. */
  readonly warmer?: number | undefined
  /** K */
  readonly temperature: number
}

/**
 * Published outdoor design temperatures of a station, as examples: what the town asks for goes first.
 *
 * @example
 * outdoorDesigns('716240').find(({ warmer }) => warmer === 0.99)?.temperature // 257.55, or -15.6 C
 */
export function outdoorDesigns(station: string): readonly OutdoorDesign[] {
  return rows.filter((row) => row.station === station)
}

const rows: readonly OutdoorDesign[] = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        station: z.string(),
        region: z.string(),
        list: z.enum(['ashrae-2009', 'ashrae-2013', 'din-2003', 'din-2020', 'energy-star-2019']),
        basis: z.enum(['read', 'recalled']),
        warmer: z.optional(writtenAmount('fraction')),
        temperature: writtenAmount('temperature'),
      }),
    ),
  }),
  packed,
).rows
