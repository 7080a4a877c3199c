import { firstImpossible } from '../first-impossible.js'
import { flowAtLoss } from '../friction/flow-at-loss.js'
import { standardGravity } from '../friction/head.js'
import type { Run } from '../friction/run-loss.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface GravityLoop {
  /** Density in the warm riser, kg/m3. */
  readonly warmDensity: number
  /** Density in the cool leg, kg/m3. */
  readonly coolDensity: number
  /** m, from the middle of what heats up to the middle of what cools down. */
  readonly height: number
  /** All that the flow passes. */
  readonly run: Run
}

/**
 * Flow that the weight of the cool leg drives round a loop while no pump runs: ghost flow, where nobody wants it. A flow check
 * that opens only above this head, or a shut valve, stops it.
 *
 * @returns m3/s
 *
 * @example
 * gravityFlow({ warmDensity: 971.8, coolDensity: 998.2, height: 3,
 *   run: { density: 985, viscosity: 0.0005, parts: [{ name: 'Z2', part: 'valve', kv: 3 }] } }) // value 0.0000735
 */
export function gravityFlow({ warmDensity, coolDensity, height, run }: GravityLoop): Sizing {
  const why = firstImpossible(
    ['density of the warm riser', warmDensity, 'above zero'],
    ['density of the cool leg', coolDensity, 'above zero'],
    ['height of the loop', height, 'zero or more'],
  )
  if (why !== undefined) return cannotSize(why)
  const push = Math.max(0, coolDensity - warmDensity) * standardGravity * height
  const flow = flowAtLoss(run, push)
  if (!flow.sized) return flow
  return sized({
    value: flow.value,
    working: [
      { name: 'density of the warm riser', value: warmDensity, unit: 'kg/m3' },
      { name: 'density of the cool leg', value: coolDensity, unit: 'kg/m3' },
      { name: 'height of the loop', value: height, unit: 'm' },
      { name: 'pressure that drives it', value: push, unit: 'Pa' },
      { name: 'flow', value: flow.value, unit: 'm3/s' },
    ],
    assumed: [...flow.assumed, 'nothing holds the flow back but what the run lists'],
    valid: flow.valid && coolDensity >= warmDensity,
  })
}
