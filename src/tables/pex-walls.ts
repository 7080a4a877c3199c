import * as z from 'zod/mini'
import packed from './pex-walls.generated.json' with { type: 'json' }
import { writtenAmount } from './written-amount.js'

/**
 * Largest inside diameter that PEX tube of SDR9 may have, by its smallest wall; nothing for a size that is not listed. For
 * hydraulics the average one of {@link pipeSize} is used.
 *
 * @param size nominal inches
 * @returns m
 *
 * @example
 * largestPexBore(0.75) // 0.0173, or 0.681 in
 */
export function largestPexBore(size: number): number | undefined {
  const row = rows.find((each) => Math.abs(each.size - size) < 1e-9)
  return row === undefined ? undefined : row.outside - 2 * row.smallestWall
}

const { rows } = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        size: writtenAmount('nominalSize'),
        outside: writtenAmount('length'),
        smallestWall: writtenAmount('length'),
      }),
    ),
  }),
  packed,
)
