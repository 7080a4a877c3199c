import * as z from 'zod/mini'
import packed from './legionella.generated.json' with { type: 'json' }
import { writtenAmount } from './written-amount.js'

/** What the bacterium does at a temperature. */
export type LegionellaBehavior = 'rests' | 'grows' | 'thrives' | 'dies'

/** A band of temperature, which reaches up to the next. */
export interface LegionellaBand {
  readonly behavior: LegionellaBehavior
  /** K */
  readonly from: number
  /** s, until a tenth is left, at the foot of the band. */
  readonly tenthLeftAfter?: number | undefined
}

/** The bands, coldest first. */
export function legionellaBands(): readonly LegionellaBand[] {
  return bands
}

const bands: readonly LegionellaBand[] = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        behavior: z.enum(['rests', 'grows', 'thrives', 'dies']),
        from: writtenAmount('temperature'),
        tenthLeftAfter: z.optional(writtenAmount('time')),
      }),
    ),
  }),
  packed,
).rows
