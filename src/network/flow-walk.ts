import type { Thing } from '../model/index.js'
import { bars, type Barriers } from './barriers.js'
import { bothWalks } from './both-walks.js'
import { drawnBothWays } from './drawn-both-ways.js'
import type { Flow } from './open-flow.js'
import type { Network } from './open-network.js'
import type { PortGraph } from './port-graph.js'
import { startPorts, type Start } from './start.js'
import type { MissingFact, Told } from './told.js'
import type { Passable, Walk } from './walk.js'

/** With the flow of the heating water, or against it. */
export type Direction = 'downstream' | 'upstream'

/** How to walk, and where ways end. */
export interface FlowGait extends Pick<Barriers, 'things'> {
  readonly direction: Direction
  /** A way ends at such a component, but for the ports where the walk begins. Where it cannot be told, the answer is the fact that would tell. */
  readonly endsAt: (thing: Thing) => Told
}

/** What is reached with the flow, or against it. */
export interface FlowWalk {
  readonly graph: PortGraph
  /** By ways that are surely there and surely run in that direction. */
  readonly sure: Walk
  /** By ways of which that is not known as well. */
  readonly perhaps: Walk
  /** What would tell where the walk begins. */
  readonly missing: readonly MissingFact[]
  /** What would tell what lies behind the open ends that are come to. */
  readonly border: readonly MissingFact[]
  /** Lines in which the water is drawn to run both ways. */
  readonly disputed: readonly MissingFact[]
  readonly visited: number
}

/** Walks from a port with the flow of the heating water, or against it. Legs without flow are not walked. */
export function flowWalk(network: Network, from: Start, { direction, endsAt, things }: FlowGait): FlowWalk {
  const graph = network.graph()
  const start = startPorts(graph, from)
  const barriers = { crossing: true, ...(things === undefined ? {} : { things }) }
  const gait = { graph, flow: network.flow(), direction, endsAt, barriers, starts: new Set(start.ports) }
  const { sure, perhaps } = bothWalks(graph, start.ports, { surely: surely(gait), possibly: possibly(gait) })
  const { missing } = start
  const visited = sure.visited + perhaps.visited
  const disputed = drawnBothWays(disputedOn(gait, perhaps), network.installation.things)
  return {
    graph,
    sure,
    perhaps,
    missing,
    border: openEnds(gait, perhaps),
    disputed,
    visited,
  }
}

interface Gait {
  readonly graph: PortGraph
  readonly flow: Flow
  readonly direction: Direction
  readonly endsAt: (thing: Thing) => Told
  readonly barriers: Barriers
  readonly starts: ReadonlySet<string>
}

function surely(gait: Gait): Passable {
  return (passage, to, from) =>
    passage.unknown === undefined &&
    bars(passage, gait.barriers) === false &&
    endAt(from, gait) === false &&
    along(from, to, gait) === 'with'
}

/** What is met behind an open end is met nobody knows where: such a way ends there, and the answer is open. */
function possibly(gait: Gait): Passable {
  return (passage, to, from) => {
    if (passage.unknown !== undefined || bars(passage, gait.barriers) === true || endAt(from, gait) === true)
      return false
    const way = along(from, to, gait)
    return way === 'with' || way === undefined
  }
}

function along(from: string, to: string, { flow, direction }: Gait): ReturnType<Flow['along']> {
  return direction === 'downstream' ? flow.along(from, to) : flow.along(to, from)
}

function endAt(name: string, { graph, endsAt, starts }: Gait): Told {
  if (starts.has(name)) return false
  const thing = graph.node(name)?.component
  return thing === undefined ? false : endsAt(thing)
}

function disputedOn({ graph, flow: { disputes } }: Gait, { reached }: Walk): readonly Thing[] {
  if (disputes === undefined) return []
  return [...reached.keys()].flatMap((from) => graph.linksAt(from).flatMap(({ to }) => disputes.lineAt(from, to) ?? []))
}

function openEnds(gait: Gait, perhaps: Walk): readonly MissingFact[] {
  return [...perhaps.reached.keys()].flatMap((name) =>
    endAt(name, gait) === true
      ? []
      : gait.graph.linksAt(name).flatMap(({ passage, to }) => {
          const way = along(name, to, gait)
          return way === 'against' || way === 'still' || passage.unknown === undefined ? [] : [passage.unknown]
        }),
  )
}
