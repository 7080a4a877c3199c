import * as z from 'zod/mini'
import packed from './two-k-fittings.generated.json' with { type: 'json' }

/** Fittings with constants of the two-K method. */
export type TwoKFitting = (typeof fittings)[number]

/** K = k1 / Re + kInfinite x (1 + 1 / inside diameter in inches). */
export interface TwoK {
  readonly k1: number
  readonly kInfinite: number
}

/**
 * Constants of the two-K method for a fitting.
 *
 * @example
 * twoKOf('globe-valve') // { k1: 1500, kInfinite: 4 }
 */
export function twoKOf(fitting: TwoKFitting): TwoK {
  const row = rows.find((each) => each.fitting === fitting)
  if (row === undefined) throw new Error(`The table of two-K constants lacks ${fitting}.`)
  return { k1: row.k1, kInfinite: row.kInfinite }
}

const fittings = [
  'elbow90-threaded',
  'elbow90-welded',
  'long-elbow90',
  'elbow45',
  'return-bend-threaded',
  'tee-branch-threaded',
  'tee-branch-welded',
  'tee-run-threaded',
  'gate-valve',
  'ball-valve',
  'globe-valve',
  'swing-check',
  'lift-check',
] as const

const positive = z.number().check(z.positive())

const { rows } = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(z.strictObject({ fitting: z.enum(fittings), k1: positive, kInfinite: positive })),
  }),
  packed,
)
