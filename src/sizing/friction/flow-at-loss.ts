import { fallingRoot } from '../falling-root.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { impossibleRun, lossOf, type Run } from './run-loss.js'

/**
 * Flow at which a run loses a pressure: the inverse of {@link runLoss}.
 *
 * @param loss Pa
 * @returns m3/s
 *
 * @example
 * flowAtLoss({ density: 983.2, viscosity: 0.000466, parts: [{ name: 'ZV2', part: 'valve', kv: 6.487 }] }, 213) // value 0.0000839
 */
export function flowAtLoss(run: Run, loss: number): Sizing {
  const why = firstImpossible(['pressure loss', loss, 'zero or more']) ?? impossibleRun(run)
  if (why !== undefined) return cannotSize(why)
  const lossAt = (flow: number): number => run.parts.reduce((sum, part) => sum + lossOf(part, flow, run), 0)
  if (lossAt(1) === 0) return cannotSize('Nothing in the run takes any pressure, so no flow goes with a loss.')
  const most = enough(lossAt, loss)
  const value = loss === 0 ? 0 : fallingRoot((flow) => loss - lossAt(flow), 0, most)
  return sized({
    value,
    working: [
      { name: 'pressure loss', value: loss, unit: 'Pa' },
      { name: 'flow', value, unit: 'm3/s' },
    ],
    assumed: [`friction by ${run.method ?? 'colebrook'}`],
    valid: true,
  })
}

/** A flow that loses more, found by doubling. */
function enough(lossAt: (flow: number) => number, loss: number): number {
  const doubled = (flow: number): number => (lossAt(flow) < loss ? doubled(flow * 2) : flow)
  return doubled(1e-6)
}
