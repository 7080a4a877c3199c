import * as z from 'zod/mini'
import packed from './csst-flow.generated.json' with { type: 'json' }
import { writtenAmount } from './written-amount.js'

/** How natural gas of specific gravity 0.60 flows in corrugated tubing: cfh = factor * (in wc per ft) ** exponent. */
export interface CsstFlow {
  /** Equivalent hydraulic diameter: the designation of the tubing. */
  readonly ehd: number
  /** Nominal inches by the usual pairing of the trade. */
  readonly size: number
  readonly factor: number
  readonly exponent: number
  /** 1, the largest departure from the cells to which the law was fitted. */
  readonly departure: number
}

/**
 * The flow law of a corrugated tubing; nothing for an EHD that is not listed.
 *
 * @example
 * csstFlow(18)?.size // 0.5
 */
export function csstFlow(ehd: number): CsstFlow | undefined {
  return csstFlows.find((row) => row.ehd === ehd)
}

const positive = z.number().check(z.positive())

/** All listed tubings, narrowest first. */
export const csstFlows: readonly CsstFlow[] = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        ehd: z.int().check(z.positive()),
        size: writtenAmount('nominalSize'),
        factor: positive,
        exponent: positive,
        departure: writtenAmount('fraction'),
      }),
    ),
  }),
  packed,
).rows
