import * as z from 'zod/mini'
import packed from './gas-flow.generated.json' with { type: 'json' }

/** Gases that house piping carries. */
export type PipedGas = 'natural-gas' | 'propane'

/** How a gas flows by the pipe sizing equations of the fuel gas code. */
export interface GasFlow {
  /** Relative to air. */
  readonly specificGravity: number
  /** Cr: density, viscosity and temperature in one number. */
  readonly flowFactor: number
  /** Y: how far the gas departs from an ideal one while it expands along the pipe. */
  readonly compressionFactor: number
}

/**
 * The factors of a gas in the pipe sizing equations of the fuel gas code.
 *
 * @example
 * gasFlow('natural-gas').flowFactor // 0.6094
 */
export function gasFlow(name: PipedGas): GasFlow {
  const row = rows.find(({ gas }) => gas === name)
  if (row === undefined) throw new Error(`The table of gas flow lacks ${name}.`)
  return row
}

const factor = z.number().check(z.positive())

const rows: readonly (GasFlow & { readonly gas: PipedGas })[] = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        gas: z.enum(['natural-gas', 'propane']),
        specificGravity: factor,
        flowFactor: factor,
        compressionFactor: factor,
      }),
    ),
  }),
  packed,
).rows
