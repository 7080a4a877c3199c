import * as z from 'zod/mini'
import packed from './degree-days.generated.json' with { type: 'json' }

/** Heating degree days of a normal year, counted below 65 F. */
export interface NormalDegreeDays {
  /** A region by name, or a station by its WMO number. */
  readonly place: string
  /** Whether the figures were read or recalled, then within 5 %. */
  readonly basis: 'read' | 'recalled'
  /** K days, twelve from January; of some places only the year is known. */
  readonly months?: readonly number[] | undefined
  /** K days */
  readonly year: number
}

/**
 * Heating degree days of a normal year; nothing for a place that is not listed.
 *
 * @example
 * normalDegreeDays('new-england')?.year // 3670 K days, or 6,606 F days
 */
export function normalDegreeDays(place: string): NormalDegreeDays | undefined {
  return rows.find((row) => row.place === place)
}

/** Written in F days, held in K days. */
const days = z.pipe(
  z.number().check(z.nonnegative()),
  z.transform((fahrenheitDays) => fahrenheitDays / 1.8),
)

const rows: readonly NormalDegreeDays[] = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        place: z.string(),
        basis: z.enum(['read', 'recalled']),
        months: z.optional(z.array(days).check(z.length(12))),
        year: days,
      }),
    ),
  }),
  packed,
).rows
