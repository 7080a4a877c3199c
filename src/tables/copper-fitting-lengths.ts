import * as z from 'zod/mini'
import packed from './copper-fitting-lengths.generated.json' with { type: 'json' }
import { writtenAmount } from './written-amount.js'

/** Wrought copper fittings whose loss is listed as a length of pipe. */
export type CopperFitting = (typeof fittings)[number]

/** `state-code` was read from a published code; `trade` is recalled, larger, and the cautious one. */
export type FittingList = (typeof lists)[number]

interface ListedFitting {
  readonly list: FittingList
  readonly fitting: CopperFitting
  /** Nominal inches. */
  readonly size: number
}

/**
 * Length of pipe that loses as much as a wrought copper fitting; nothing where the list has none.
 *
 * @returns m
 *
 * @example
 * copperFittingLength({ list: 'state-code', fitting: 'tee-branch', size: 0.75 }) // 0.61, or 2 ft
 */
export function copperFittingLength({ list, fitting, size }: ListedFitting): number | undefined {
  return rows.find((row) => row.list === list && row.fitting === fitting && Math.abs(row.size - size) < 1e-9)?.length
}

const fittings = ['elbow90', 'elbow45', 'tee-run', 'tee-branch', 'gate-valve'] as const
const lists = ['state-code', 'trade'] as const

const { rows } = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        list: z.enum(lists),
        fitting: z.enum(fittings),
        size: writtenAmount('nominalSize'),
        length: writtenAmount('length'),
      }),
    ),
  }),
  packed,
)
