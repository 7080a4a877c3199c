import { cannotSize, sized, type Sizing } from '../sizing.js'
import type { Run } from '../friction/run-loss.js'
import type { Pump } from './pump.js'
import { solveFlowNetwork } from './solve-flow-network.js'

/**
 * Flow at which a pump and one circuit meet.
 *
 * @returns m3/s
 *
 * @example
 * // 200 L/min at most, 4 m at none, through a Kv of 2: value 0.000314
 * operatingPoint({ pump: { curve: [{ flow: 0, head: 4 }, { flow: 0.001, head: 0 }], control: { mode: 'constant-speed' } },
 *   run: { density: 983.2, viscosity: 0.000466, parts: [{ name: 'valve', part: 'valve', kv: 2 }] } })
 */
export function operatingPoint({ pump, run }: { readonly pump: Pump; readonly run: Run }): Sizing {
  const { parts, ...fluid } = run
  const solution = solveFlowNetwork({
    ...fluid,
    edges: [
      { name: 'pump', from: 'inlet', to: 'outlet', parts: [], pump },
      { name: 'circuit', from: 'outlet', to: 'inlet', parts },
    ],
  })
  if (!solution.solved) return cannotSize(solution.why)
  const flow = solution.edge('circuit')?.flow ?? 0
  return sized({
    value: flow,
    working: [
      { name: 'head of the pump', value: solution.pumps[0]?.head ?? 0, unit: 'm', readAs: 'head' },
      { name: 'head of the circuit', value: solution.edge('circuit')?.loss ?? 0, unit: 'm', readAs: 'head' },
      { name: 'flow', value: flow, unit: 'm3/s' },
    ],
    assumed: solution.assumed,
    valid: solution.valid,
  })
}
