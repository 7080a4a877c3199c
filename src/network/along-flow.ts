import type { Thing } from '../model/index.js'
import type { Barriers } from './barriers.js'
import { flowWalk, type Direction, type FlowGait, type FlowWalk } from './flow-walk.js'
import type { Network } from './open-network.js'
import type { Start } from './start.js'
import { uniqueFacts, type MissingFact } from './told.js'
import { wayTo, type Walk } from './walk.js'
import { witnessOf } from './witness.js'

/** Components that water comes by, nearest first. */
export interface AlongFlow {
  /** On ways that are surely there and surely run in that direction. */
  readonly sure: readonly Thing[]
  /** Perhaps, on ways whose direction or whose pieces are not known. */
  readonly possible: readonly Thing[]
  /** Something that is not listed may be among them too. */
  readonly open: boolean
  /** What would tell more; it may be empty where only a direction is not known. */
  readonly missing: readonly MissingFact[]
  /** The way of the water that leads by one of the sure ones. */
  readonly witness: (thing: Thing) => readonly string[]
  readonly visited: number
}

/** What the water may not pass on its way; nothing said means any way counts. */
export type Ways = Pick<Barriers, 'things'>

/**
 * Everything that the water of the circuit comes to from a port, with the flow; the component where it begins is left out.
 * Never throws.
 *
 * @example
 * const fed = downstreamOf(network, { component: 'HS', port: 'branch2' })
 */
export function downstreamOf(network: Network, from: Start, ways: Ways = {}): AlongFlow {
  return allAlong(network, from, 'downstream', ways)
}

/**
 * Everything that the water of the circuit has come by on its way to a port; the component of the port is left out. Never
 * throws.
 *
 * @example
 * const before = upstreamOf(network, { component: 'B1', port: 'return' })
 */
export function upstreamOf(network: Network, to: Start, ways: Ways = {}): AlongFlow {
  return allAlong(network, to, 'upstream', ways)
}

/** Two places in the flow; they may be two ports of one component. */
export interface Stretch {
  readonly from: Start
  readonly to: Start
}

/**
 * Everything that stands between two places in the flow: what water comes to from the first before it comes to the second's
 * component, and has come by on its way to the second since the first's. Each with a whole way from one to the other. Never
 * throws.
 *
 * @example
 * const heated = betweenInFlow(network, { from: { component: 'B1', port: 'supply' }, to: { component: 'B1', port: 'return' } })
 */
export function betweenInFlow(network: Network, { from, to }: Stretch, ways: Ways = {}): AlongFlow {
  const endsAt = (thing: Thing): boolean => thing.id === from.component || thing.id === to.component
  const ahead = walkAlong(network, from, { ...ways, direction: 'downstream', endsAt })
  const behind = walkAlong(network, to, { ...ways, direction: 'upstream', endsAt })
  const sure = onBoth(ahead.sure, behind.sure, endsAt)
  const possible = onBoth(ahead.perhaps, behind.perhaps, endsAt)
  return {
    sure: [...sure],
    possible: [...possible].filter((thing) => !sure.has(thing)),
    open: ahead.open || behind.open,
    missing: uniqueFacts([...ahead.missing, ...behind.missing]),
    witness: (thing) => [...new Set([...ahead.witness(thing), ...behind.witness(thing).toReversed()])],
    visited: ahead.visited + behind.visited,
  }
}

function onBoth(
  ahead: ReadonlyMap<Thing, string>,
  behind: ReadonlyMap<Thing, string>,
  isEnd: (thing: Thing) => boolean,
): ReadonlySet<Thing> {
  return new Set([...ahead.keys()].filter((thing) => behind.has(thing) && !isEnd(thing)))
}

function allAlong(network: Network, from: Start, direction: Direction, ways: Ways): AlongFlow {
  const { sure, perhaps, ...walked } = walkAlong(network, from, { ...ways, direction, endsAt: () => false })
  const isOther = ({ id }: Thing): boolean => id !== from.component
  const possible = [...perhaps.keys()].filter((thing) => isOther(thing) && !sure.has(thing))
  return { ...walked, sure: [...sure.keys()].filter(isOther), possible }
}

interface WalkedAlong extends Pick<AlongFlow, 'open' | 'missing' | 'witness' | 'visited'> {
  /** To the port at which each is come to first. */
  readonly sure: ReadonlyMap<Thing, string>
  readonly perhaps: ReadonlyMap<Thing, string>
}

function walkAlong(network: Network, from: Start, gait: FlowGait): WalkedAlong {
  const walked = flowWalk(network, from, gait)
  const [sure, perhaps] = [componentsOn(walked, walked.sure), componentsOn(walked, walked.perhaps)]
  const { border, disputed, missing, visited } = walked
  return {
    sure,
    perhaps,
    open: missing.length > 0 || border.length > 0,
    missing: uniqueFacts([...missing, ...border, ...disputed]),
    witness: (thing) => {
      const port = sure.get(thing)
      return port === undefined ? [] : witnessOf(wayTo(port, walked.sure), walked.graph)
    },
    visited,
  }
}

function componentsOn({ graph }: FlowWalk, { reached }: Walk): ReadonlyMap<Thing, string> {
  const found = new Map<Thing, string>()
  for (const name of reached.keys()) {
    const thing = graph.node(name)?.component
    if (thing !== undefined && !found.has(thing)) found.set(thing, name)
  }
  return found
}
