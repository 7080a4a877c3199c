import { flowEnd } from './flow-end.js'
import type { PortGraph } from './port-graph.js'
import { stillPipes } from './still-pipes.js'
import type { Hub, Pipe, WaterHubs } from './water-hubs.js'

/** What is known of the direction in each pipe. */
export interface FlowDirections {
  readonly still: ReadonlySet<Pipe>
  /** The port at which a pipe begins, seen with the flow: two of them where what is drawn contradicts itself. */
  readonly beginnings: ReadonlyMap<Pipe, ReadonlySet<string>>
}

interface Finding {
  readonly water: WaterHubs
  readonly still: ReadonlySet<Pipe>
  readonly beginnings: Map<Pipe, Set<string>>
  /** How many live pipes bring water to a hub, and how many take it. */
  readonly tallies: ReadonlyMap<Hub, Tally>
  readonly queue: Hub[]
}

interface Tally {
  readonly live: readonly Pipe[]
  brought: number
  taken: number
}

/** Ports that say where water goes tell it of their pipes; where all pipes but one bring water, the last takes it, and the other way round. */
export function flowDirections(graph: PortGraph, water: WaterHubs): FlowDirections {
  const still = stillPipes(water, () => true)
  const tallies = new Map(
    water.hubs.map((hub) => [hub, { live: hub.pipes.filter((pipe) => !still.has(pipe)), brought: 0, taken: 0 }]),
  )
  const finding: Finding = { water, still, beginnings: new Map(), tallies, queue: [] }
  for (const [hub, { live }] of tallies) for (const pipe of live) readPort(graph, hub, pipe, finding)
  // An array gives what is pushed while it is read.
  for (const hub of finding.queue) passOn(hub, finding)
  return finding
}

function readPort(graph: PortGraph, hub: Hub, pipe: Pipe, finding: Finding): void {
  const port = ownEnd(pipe, hub)
  const node = graph.node(port)
  const end = node?.component === undefined ? undefined : flowEnd(node.component, node.port)
  if (end !== undefined) settle(pipe, end === 'leaves' ? port : farEnd(pipe, port), finding)
}

/** What is once found stays found, so the order of finding does not matter. */
function settle(pipe: Pipe, beginning: string, { water, beginnings, tallies, queue }: Finding): void {
  const found = beginnings.get(pipe) ?? new Set()
  if (found.has(beginning)) return
  beginnings.set(pipe, found.add(beginning))
  for (const end of [pipe.from, pipe.to]) {
    const hub = water.hubAt.get(end)
    const tally = hub === undefined ? undefined : tallies.get(hub)
    if (hub === undefined || tally === undefined) continue
    if (end === beginning) tally.taken += 1
    else tally.brought += 1
    if (Math.max(tally.taken, tally.brought) >= tally.live.length - 1) queue.push(hub)
  }
}

function passOn(hub: Hub, finding: Finding): void {
  const tally = finding.tallies.get(hub)
  if (tally === undefined || tally.live.length < 2) return
  const others = tally.live.length - 1
  for (const pipe of tally.live) {
    const port = ownEnd(pipe, hub)
    const told = finding.beginnings.get(pipe)
    const broughtByOthers = tally.brought - Number(told?.has(farEnd(pipe, port)) === true)
    const takenByOthers = tally.taken - Number(told?.has(port) === true)
    if (broughtByOthers === others) settle(pipe, port, finding)
    if (takenByOthers === others) settle(pipe, farEnd(pipe, port), finding)
  }
}

function ownEnd(pipe: Pipe, hub: Hub): string {
  return hub.ports.has(pipe.from) ? pipe.from : pipe.to
}

function farEnd(pipe: Pipe, port: string): string {
  return pipe.from === port ? pipe.to : pipe.from
}
