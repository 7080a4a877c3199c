import * as z from 'zod/mini'
import packed from './water-heater-bins.generated.json' with { type: 'json' }
import { writtenAmount } from './written-amount.js'

/** Draw patterns by which storage water heaters are rated in the United States. */
export type WaterHeaterBinName = 'very-small' | 'low' | 'medium' | 'high'

/** A draw pattern. */
export interface WaterHeaterBin {
  readonly bin: WaterHeaterBinName
  /** m3, the least first hour of the bin; it reaches up to the next. */
  readonly firstHour: number
  /** m3 that the rating test draws in a day. */
  readonly dailyDraw: number
}

/** The bins, smallest first. 16 CFR 305 Appendix D1; daily draws of 10 CFR 430 Appendix E, recalled. */
export function waterHeaterBins(): readonly WaterHeaterBin[] {
  return bins
}

/**
 * The bin that a first hour falls in.
 *
 * @param firstHour m3
 * @example
 * waterHeaterBin(0.227)?.bin // 'medium', for 60 gal
 */
export function waterHeaterBin(firstHour: number): WaterHeaterBin | undefined {
  return bins.findLast((bin) => bin.firstHour <= firstHour)
}

const bins: readonly WaterHeaterBin[] = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        bin: z.enum(['very-small', 'low', 'medium', 'high']),
        firstHour: writtenAmount('volume'),
        dailyDraw: writtenAmount('volume'),
      }),
    ),
  }),
  packed,
).rows
