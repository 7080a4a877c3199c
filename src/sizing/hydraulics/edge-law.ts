import { meanVelocity } from '../friction/flow-in-pipe.js'
import { standardGravity } from '../friction/head.js'
import { lossOf, type RunPart } from '../friction/run-loss.js'
import type { FlowEdge, FlowNetwork } from './flow-network.js'
import type { ReadyPump } from './pump.js'

/** An edge made ready for the calculation. */
export interface EdgeLaw {
  readonly edge: FlowEdge
  /** Node numbers. */
  readonly from: number
  readonly to: number
  readonly pump: ReadyPump | undefined
  /** m that the parts take at a flow of zero or more. */
  readonly lossAt: (flow: number) => number
}

type Ends = Pick<EdgeLaw, 'from' | 'to' | 'pump'>

export function edgeLaw(edge: FlowEdge, ends: Ends, network: FlowNetwork): EdgeLaw {
  return { edge, ...ends, lossAt: headLoss(edge.parts, network) }
}

/** m that parts take one after the other, at a flow of zero or more. */
export function headLoss(parts: readonly RunPart[], network: FlowNetwork): (flow: number) => number {
  const weight = network.density * standardGravity
  return (flow) => parts.reduce((sum, part) => sum + lossOf(part, flow, network), 0) / weight
}

/** m/s, in the narrowest pipe of the edge. */
export function highestVelocity({ edge }: EdgeLaw, flow: number): number {
  const bores = edge.parts.flatMap((part) => (part.part === 'pipe' ? [part.insideDiameter] : []))
  return bores.length === 0 ? 0 : meanVelocity(Math.abs(flow), Math.min(...bores))
}
