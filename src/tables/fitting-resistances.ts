import * as z from 'zod/mini'
import packed from './fitting-resistances.generated.json' with { type: 'json' }

/** Fittings with a listed typical resistance coefficient. */
export type ResistingFitting = (typeof fittings)[number]

/**
 * Typical resistance coefficient K of a fitting: pressure loss over the pressure of the moving water.
 *
 * @example
 * fittingResistance('elbow90') // 0.75
 */
export function fittingResistance(fitting: ResistingFitting): number {
  const row = rows.find((each) => each.fitting === fitting)
  if (row === undefined) throw new Error(`The table of resistances lacks ${fitting}.`)
  return row.resistance
}

const fittings = [
  'elbow90',
  'long-elbow90',
  'elbow45',
  'tee-run',
  'tee-branch',
  'coupling',
  'gate-valve',
  'globe-valve',
  'swing-check',
] as const

const { rows } = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(z.strictObject({ fitting: z.enum(fittings), resistance: z.number().check(z.positive()) })),
  }),
  packed,
)
