import * as z from 'zod/mini'
import { si } from '../units/index.js'
import packed from './tabulated-outputs.generated.json' with { type: 'json' }
import { writtenAmount } from './written-amount.js'

/** Cast-iron emitters with a trade table of outputs. */
export type TabulatedEmitter = 'cast-iron-radiator' | 'cast-iron-baseboard'

/** A printed line: what an emitter of size one gives with water of a mean temperature. */
export interface TabulatedOutput {
  /** K, mean of supply and return. */
  readonly water: number
  /** W for one m2 of EDR (radiator), W for one m (baseboard). */
  readonly output: number
}

/**
 * The printed outputs of an emitter, coolest first; the radiator stands in a room at 70 F, the baseboard takes in air at 65 F.
 *
 * @example
 * tabulatedOutputs('cast-iron-radiator').at(-1) // { water: 374.8, output: 757.1 }, or 240 Btu/h for a square foot at 215 F
 */
export function tabulatedOutputs(emitter: TabulatedEmitter): readonly TabulatedOutput[] {
  return rows
    .filter((row) => row.emitter === emitter)
    .map(({ per, water, output }) => ({ water, output: output / sizeOf[per] }))
}

const sizeOf = { squareFootEdr: si('area', '1 ft2'), foot: si('length', '1 ft') } as const

interface Row extends TabulatedOutput {
  readonly emitter: TabulatedEmitter
  readonly per: keyof typeof sizeOf
}

const rows: readonly Row[] = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        emitter: z.enum(['cast-iron-radiator', 'cast-iron-baseboard']),
        per: z.enum(['squareFootEdr', 'foot']),
        water: writtenAmount('temperature'),
        output: writtenAmount('heatRate'),
      }),
    ),
  }),
  packed,
).rows
