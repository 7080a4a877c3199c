import * as z from 'zod/mini'
import packed from './three-k-fittings.generated.json' with { type: 'json' }

/** Fittings with constants of the three-K method. */
export type ThreeKFitting = (typeof fittings)[number]

/** K = k1 / Re + ki x (1 + kd / nominal inches ^ 0.3). */
export interface ThreeK {
  readonly k1: number
  readonly ki: number
  readonly kd: number
}

/**
 * Constants of the three-K method for a fitting.
 *
 * @example
 * threeKOf('elbow90-threaded') // { k1: 800, ki: 0.14, kd: 4 }
 */
export function threeKOf(fitting: ThreeKFitting): ThreeK {
  const row = rows.find((each) => each.fitting === fitting)
  if (row === undefined) throw new Error(`The table of three-K constants lacks ${fitting}.`)
  return { k1: row.k1, ki: row.ki, kd: row.kd }
}

const fittings = [
  'elbow90-threaded',
  'long-elbow90',
  'elbow45',
  'tee-branch-threaded',
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
    rows: z.array(z.strictObject({ fitting: z.enum(fittings), k1: positive, ki: positive, kd: positive })),
  }),
  packed,
)
