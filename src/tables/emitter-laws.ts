import * as z from 'zod/mini'
import packed from './emitter-laws.generated.json' with { type: 'json' }

/** Emitters whose output follows a known power of the excess temperature. */
export type EmitterName =
  'cast-iron-radiator' | 'cast-iron-baseboard' | 'panel-radiator' | 'fin-tube' | 'convector' | 'fan-coil'

/**
 * Power by which the output of an emitter follows the excess of its water over the air; the maker's figure is better.
 *
 * @example
 * emitterExponent('cast-iron-radiator') // 1.3
 */
export function emitterExponent(emitter: EmitterName): number {
  const row = rows.find((each) => each.emitter === emitter)
  if (row === undefined) throw new Error(`The table of emitter laws lacks ${emitter}.`)
  return row.exponent
}

const rows = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        emitter: z.enum([
          'cast-iron-radiator',
          'cast-iron-baseboard',
          'panel-radiator',
          'fin-tube',
          'convector',
          'fan-coil',
        ]),
        exponent: z.number().check(z.positive()),
      }),
    ),
  }),
  packed,
).rows
