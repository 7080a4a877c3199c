import * as z from 'zod/mini'
import packed from './wall-conductances.generated.json' with { type: 'json' }

/** Walls as built, without insulation that was added later. */
export type OldWall = 'solid-brick' | 'cavity' | 'timber-frame'

/**
 * Conductance of a wall of which only its kind and the age band of the house are known; nothing for a band that is not listed.
 *
 * Bands of the British assessment of existing dwellings, A being the oldest. Measurements in old houses found solid brick nearer
 * 1.7 than 2.1.
 *
 * @returns W/m2 K
 *
 * @example
 * wallConductance('cavity', 'A') // 2.1
 */
export function wallConductance(wall: OldWall, ageBand: string): number | undefined {
  return rows.find((row) => row.wall === wall && row.bands.includes(ageBand))?.conductance
}

const rows = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        wall: z.enum(['solid-brick', 'cavity', 'timber-frame']),
        bands: z.array(z.string().check(z.regex(/^[A-L]$/))),
        conductance: z.number().check(z.positive()),
      }),
    ),
  }),
  packed,
).rows
