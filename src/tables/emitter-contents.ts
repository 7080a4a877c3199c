import * as z from 'zod/mini'
import { si } from '../units/index.js'
import packed from './emitter-contents.generated.json' with { type: 'json' }
import { writtenAmount } from './written-amount.js'

/** Emitters whose water is estimated: radiators by their radiating surface in EDR, baseboard by its length. */
export type EstimatedEmitter = 'cast-iron-radiator' | 'cast-iron-baseboard'

/** Water in an emitter, for one m2 of EDR or one m of length. */
export interface EmitterContents {
  /** m3 */
  readonly least: number
  /** m3 */
  readonly likely: number
  /** m3 */
  readonly most: number
}

/**
 * Water in an emitter for one m2 of EDR (radiator) or one m (baseboard), common practice; the maker's figure is better.
 *
 * @example
 * emitterContents('cast-iron-radiator').likely // 0.00652 m3 for one m2 of EDR, 0.16 gal for a square foot
 */
export function emitterContents(emitter: EstimatedEmitter): EmitterContents {
  const row = rows.find((each) => each.emitter === emitter)
  if (row === undefined) throw new Error(`The table of emitter contents lacks ${emitter}.`)
  const { per, least, likely, most } = row
  return { least: least / sizeOf[per], likely: likely / sizeOf[per], most: most / sizeOf[per] }
}

const sizeOf = { squareFootEdr: si('area', '1 ft2'), foot: si('length', '1 ft') } as const
const volume = writtenAmount('volume')

interface Row extends EmitterContents {
  readonly emitter: EstimatedEmitter
  readonly per: keyof typeof sizeOf
}

const rows: readonly Row[] = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        emitter: z.enum(['cast-iron-radiator', 'cast-iron-baseboard']),
        per: z.enum(['squareFootEdr', 'foot']),
        least: volume,
        likely: volume,
        most: volume,
      }),
    ),
  }),
  packed,
).rows
