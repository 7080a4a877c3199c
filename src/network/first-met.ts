import type { Thing } from '../model/index.js'
import { bars, type Barriers } from './barriers.js'
import type { Flow } from './open-flow.js'
import type { Network } from './open-network.js'
import type { Passage } from './passage.js'
import type { PortGraph } from './port-graph.js'
import { startPorts, type Start } from './start.js'
import { uniqueFacts, type MissingFact, type Told } from './told.js'
import { bothWalks } from './both-walks.js'
import { type Passable, wayTo, type Walk } from './walk.js'
import { witnessOf } from './witness.js'

/** With the flow of the heating water, or against it. */
export type Direction = 'downstream' | 'upstream'

/** What to look for on the way, and which ways count. */
export interface Meeting extends Pick<Barriers, 'things'> {
  /** A way ends at the first such component. Where it cannot be told, the answer is the fact that would tell. */
  readonly isTarget: (thing: Thing) => Told
}

/** A component that is met, with the way to it. */
export interface Met {
  readonly thing: Thing
  readonly witness: readonly string[]
}

/** What is met first on each way from a port. */
export interface FirstMet {
  /** Met first on at least one way that is surely there and surely runs in that direction, nearest first. */
  readonly sure: readonly Met[]
  /** Met first perhaps, on ways whose direction or whose pieces are not known. */
  readonly possible: readonly Met[]
  /** Something that is not listed may be met too. */
  readonly open: boolean
  /** What would tell more; it may be empty where only a direction is not known. */
  readonly missing: readonly MissingFact[]
  readonly visited: number
}

/**
 * Walks with the flow of the heating water, or against it, and gathers the first target on each way. Legs without flow are
 * not walked. The component where the walk begins is no target. Never throws.
 *
 * @example
 * const pumps = firstMet(network, { component: 'AS1', port: 'out' }, 'downstream', { isTarget: (thing) => thing.kind.name === 'circulator' })
 */
export function firstMet(network: Network, from: Start, direction: Direction, meeting: Meeting): FirstMet {
  const graph = network.graph()
  const start = startPorts(graph, from)
  const isTarget = (thing: Thing): Told => (thing.id === from.component ? false : meeting.isTarget(thing))
  const gait = { graph, flow: network.flow(), direction, isTarget, barriers: barriersOf(meeting) }
  const { sure, perhaps } = bothWalks(graph, start.ports, { surely: surely(gait), possibly: possibly(gait) })
  const met = metOn(gait, sure, (told) => told === true)
  const known = new Set(met.map(({ thing }) => thing.id))
  const possible = metOn(gait, perhaps, (told) => told !== false).filter(({ thing }) => !known.has(thing.id))
  const untold = possible.flatMap(({ thing }) => asFact(isTarget(thing)))
  const border = openEnds(gait, perhaps)
  const missing = uniqueFacts([...start.missing, ...untold, ...border])
  const open = start.missing.length > 0 || border.length > 0
  return { sure: met, possible, open, missing, visited: sure.visited + perhaps.visited }
}

interface Gait {
  readonly graph: PortGraph
  readonly flow: Flow
  readonly direction: Direction
  readonly isTarget: (thing: Thing) => Told
  readonly barriers: Barriers
}

function barriersOf({ things }: Meeting): Barriers {
  return { crossing: true, ...(things === undefined ? {} : { things }) }
}

function surely(gait: Gait): Passable {
  return (passage, to, from) =>
    passage.unknown === undefined &&
    bars(passage, gait.barriers) === false &&
    targetAt(from, gait) === false &&
    along(from, to, gait) === 'with'
}

function possibly(gait: Gait): Passable {
  return (passage, to, from) =>
    bars(passage, gait.barriers) !== true && targetAt(from, gait) !== true && mayLead(passage, from, to, gait)
}

function mayLead(passage: Passage, from: string, to: string, gait: Gait): boolean {
  // What is met behind an open end is met nobody knows where: such a way ends there, and the answer is open.
  if (passage.unknown !== undefined) return false
  const way = along(from, to, gait)
  return way === 'with' || way === undefined
}

function along(from: string, to: string, { flow, direction }: Gait): ReturnType<Flow['along']> {
  return direction === 'downstream' ? flow.along(from, to) : flow.along(to, from)
}

function targetAt(name: string, { graph, isTarget }: Gait): Told {
  const thing = graph.node(name)?.component
  return thing === undefined ? false : isTarget(thing)
}

function metOn(gait: Gait, walked: Walk, counts: (told: Told) => boolean): readonly Met[] {
  const met = new Map<string, Met>()
  for (const name of walked.reached.keys()) {
    const thing = gait.graph.node(name)?.component
    if (thing === undefined || met.has(thing.id) || !counts(gait.isTarget(thing))) continue
    met.set(thing.id, { thing, witness: witnessOf(wayTo(name, walked), gait.graph) })
  }
  return [...met.values()]
}

function openEnds(gait: Gait, perhaps: Walk): readonly MissingFact[] {
  return [...perhaps.reached.keys()].flatMap((name) =>
    targetAt(name, gait) === true
      ? []
      : gait.graph.linksAt(name).flatMap(({ passage, to }) => {
          const way = along(name, to, gait)
          return way === 'against' || way === 'still' || passage.unknown === undefined ? [] : [passage.unknown]
        }),
  )
}

function asFact(told: Told): readonly MissingFact[] {
  return typeof told === 'object' ? [told] : []
}
