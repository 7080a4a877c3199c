import * as z from 'zod/mini'
import type { PipeName } from './pipe-sizes.js'
import packed from './pipe-roughness.generated.json' with { type: 'json' }
import { writtenAmount } from './written-amount.js'

/** What the inside of a pipe is like; `drawn-tube` is copper and brass. */
export type PipeSurface = (typeof surfaces)[number]

/** Height of the roughness, from the smooth to the rough end of what is published; sizing takes the rough end. */
export interface Roughness {
  /** m */
  readonly smooth: number
  /** m */
  readonly rough: number
}

/**
 * Roughness of a surface.
 *
 * @example
 * pipeRoughness('plastic').rough // 0.000007
 */
export function pipeRoughness(surface: PipeSurface): Roughness {
  const row = rows.find((each) => each.surface === surface)
  if (row === undefined) throw new Error(`The table of roughness lacks ${surface}.`)
  return { smooth: row.smooth, rough: row.rough }
}

/**
 * The inside of a new pipe; old steel may be `corroded-steel` instead.
 *
 * @example
 * surfaceOf('copper-M') // 'drawn-tube'
 */
export function surfaceOf(pipe: PipeName): PipeSurface {
  switch (pipe) {
    case 'copper-K':
    case 'copper-L':
    case 'copper-M':
    case 'copper-DWV':
      return 'drawn-tube'
    case 'steel-40':
    case 'steel-80':
      return 'steel'
    case 'stainless-10S':
    case 'stainless-40S':
      return 'stainless-steel'
    case 'pex':
      return 'plastic'
    default:
      return pipe satisfies never
  }
}

const surfaces = [
  'drawn-tube',
  'plastic',
  'stainless-steel',
  'steel',
  'galvanized-steel',
  'corroded-steel',
  'cast-iron',
] as const

const { rows } = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({ surface: z.enum(surfaces), smooth: writtenAmount('length'), rough: writtenAmount('length') }),
    ),
  }),
  packed,
)
