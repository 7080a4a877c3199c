import * as z from 'zod/mini'
import packed from './emitter-derates.generated.json' with { type: 'json' }
import { writtenAmount } from './written-amount.js'

/** What keeps an emitter from giving all its heat. */
export type EmitterObstacle = 'cabinet' | 'curtain' | 'metallic-paint'

/** Part of its output that an emitter keeps, 0 to 1. */
export interface KeptOutput {
  readonly least: number
  readonly likely: number
  readonly most: number
}

/**
 * Part of its output that an emitter keeps behind or under something; common practice.
 *
 * @example
 * keptOutput('cabinet').likely // 0.8
 */
export function keptOutput(obstacle: EmitterObstacle): KeptOutput {
  const row = rows.find((each) => each.obstacle === obstacle)
  if (row === undefined) throw new Error(`The table of emitter derates lacks ${obstacle}.`)
  return { least: row.least, likely: row.likely, most: row.most }
}

const share = writtenAmount('fraction')

const rows = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        obstacle: z.enum(['cabinet', 'curtain', 'metallic-paint']),
        least: share,
        likely: share,
        most: share,
      }),
    ),
  }),
  packed,
).rows
