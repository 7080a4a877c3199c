import { meanVelocity } from '../friction/flow-in-pipe.js'
import { standardGravity } from '../friction/head.js'
import { lossOf } from '../friction/run-loss.js'
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
  const weight = network.density * standardGravity
  const lossAt = (flow: number): number =>
    edge.parts.reduce((sum, part) => sum + lossOf(part, flow, network), 0) / weight
  return { edge, ...ends, lossAt }
}

/** m that the edge takes from its beginning to its end at a flow of either sign; negative where a pump adds more. */
export function fallOf({ lossAt, pump }: EdgeLaw, flow: number): number {
  const loss = Math.sign(flow) * lossAt(Math.abs(flow))
  return pump === undefined ? loss : loss - pump.headAt(flow)
}

/** How that grows with the flow, m per m3/s; above zero, so that nothing is ever divided by nothing. */
export function steepness({ lossAt, pump }: EdgeLaw, flow: number): number {
  const at = Math.max(Math.abs(flow), smallFlow)
  const ofLoss = (lossAt(at * (1 + nudge)) - lossAt(at)) / (at * nudge)
  const ofPump = pump === undefined ? 0 : (pump.headAt(flow) - pump.headAt(flow + at * nudge)) / (at * nudge)
  return Math.max(ofLoss, 0) + Math.max(ofPump, 0) + leastSteepness
}

/** m/s, in the narrowest pipe of the edge. */
export function highestVelocity({ edge }: EdgeLaw, flow: number): number {
  const bores = edge.parts.flatMap((part) => (part.part === 'pipe' ? [part.insideDiameter] : []))
  return bores.length === 0 ? 0 : meanVelocity(Math.abs(flow), Math.min(...bores))
}

const nudge = 1e-6
/** m3/s; below it a flow counts as none. */
const smallFlow = 1e-10
/** m per m3/s; a river would pass. */
const leastSteepness = 1e-3
