import * as z from 'zod/mini'
import packed from './vent-materials.generated.json' with { type: 'json' }
import { writtenAmount } from './written-amount.js'

/** Kinds of vent pipe for condensing boilers. */
export type VentMaterial = 'pvc' | 'cpvc' | 'polypropylene' | 'superferritic-stainless-steel'

/**
 * Highest flue temperature that vent pipe of a material bears by common practice; the maker's manual and the listing of the
 * very pipe govern.
 *
 * @returns K
 * @example
 * highestVentTemperature('pvc') // 338.15
 */
export function highestVentTemperature(material: VentMaterial): number {
  const row = rows.find((each) => each.material === material)
  if (row === undefined) throw new Error(`The table of vent materials lacks ${material}.`)
  return row.highest
}

const rows: readonly { readonly material: VentMaterial; readonly highest: number }[] = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        material: z.enum(['pvc', 'cpvc', 'polypropylene', 'superferritic-stainless-steel']),
        highest: writtenAmount('temperature'),
      }),
    ),
  }),
  packed,
).rows
