import * as z from 'zod/mini'
import { si } from '../units/index.js'
import packed from './wire-resistance.generated.json' with { type: 'json' }

/**
 * Resistance of a stranded copper wire at 75 C as the electrical code prints it; nothing for a gauge that is not listed.
 *
 * @param gauge AWG number, such as 18
 * @returns ohm/m
 * @example
 * listedWireResistance(18) // 0.02608
 */
export function listedWireResistance(gauge: number): number | undefined {
  const row = rows.find((each) => each.gauge === gauge)
  return row === undefined ? undefined : row.ohm / thousandFeet
}

const thousandFeet = si('length', '1000 ft')

const rows: readonly { readonly gauge: number; readonly ohm: number }[] = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(z.strictObject({ gauge: z.int(), ohm: z.number().check(z.positive()) })),
  }),
  packed,
).rows
