import * as z from 'zod/mini'
import packed from './metric-copper.generated.json' with { type: 'json' }
import { writtenAmount } from './written-amount.js'

/** Metric copper tube. */
export interface MetricCopper {
  /** m */
  readonly outside: number
  /** m */
  readonly wall: number
  /** m */
  readonly inside: number
}

/**
 * Metric copper tube by its outside diameter; nothing for one that is not listed.
 *
 * @param outside m
 * @example
 * metricCopper(0.022)?.inside // 0.0198
 */
export function metricCopper(outside: number): MetricCopper | undefined {
  return metricCoppers.find((tube) => Math.abs(tube.outside - outside) < 1e-6)
}

/** All listed metric copper tubes, narrowest first. */
export const metricCoppers: readonly MetricCopper[] = z
  .parse(
    z.strictObject({
      source: z.string(),
      rows: z.array(z.strictObject({ outside: writtenAmount('length'), wall: writtenAmount('length') })),
    }),
    packed,
  )
  .rows.map(({ outside, wall }) => ({ outside, wall, inside: outside - 2 * wall }))
