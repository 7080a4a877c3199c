import * as z from 'zod/mini'
import packed from './burns.generated.json' with { type: 'json' }
import { writtenAmount } from './written-amount.js'

/** Which published list: adult burns of a degree (Moritz and Henriques 1947), or a leaflet for parents. */
export type BurnList = 'second-degree' | 'full-thickness' | 'leaflet'

/** How long skin bears water of a temperature. */
export interface BurnTime {
  /** K */
  readonly temperature: number
  /** s */
  readonly time: number
}

/**
 * The published times of a list, coolest first.
 *
 * @example
 * burnTimes('second-degree').at(-1) // { temperature: 333.15, time: 3 }
 */
export function burnTimes(list: BurnList): readonly BurnTime[] {
  return rows.filter(({ burn }) => burn === list).map(({ temperature, time }) => ({ temperature, time }))
}

const rows: readonly (BurnTime & { readonly burn: BurnList })[] = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        burn: z.enum(['second-degree', 'full-thickness', 'leaflet']),
        temperature: writtenAmount('temperature'),
        time: writtenAmount('time'),
      }),
    ),
  }),
  packed,
).rows
