import * as z from 'zod/mini'
import packed from './fin-tube-factors.generated.json' with { type: 'json' }
import { writtenAmount } from './written-amount.js'

/** A printed line: part of the rated output at a temperature. */
export interface FinTubeFactor {
  /** K */
  readonly temperature: number
  /** Over the output with water at 215 F and air at 65 F. */
  readonly factor: number
}

/**
 * The printed factors of fin-tube by the mean temperature of its water (air at 65 F) or by the air that enters (water at 215 F),
 * coolest first.
 *
 * @example
 * finTubeFactors('water').at(-1)?.factor // 1.25, at 240 F
 */
export function finTubeFactors(of: 'water' | 'air'): readonly FinTubeFactor[] {
  return rows.filter((row) => row.of === of).map(({ temperature, factor }) => ({ temperature, factor }))
}

const rows = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        of: z.enum(['water', 'air']),
        temperature: writtenAmount('temperature'),
        factor: z.number().check(z.positive()),
      }),
    ),
  }),
  packed,
).rows
