import { blockingOf, blocks, type Barriers } from './barriers.js'
import type { NetworkAnswer } from './network-answer.js'
import type { Network } from './open-network.js'
import type { PortGraph } from './port-graph.js'
import { isTargetAt, type IsTarget, type Search } from './search.js'
import { startPorts, type Start } from './start.js'
import { bothWalks } from './both-walks.js'
import { walk, wayTo, type Station, type Walk } from './walk.js'
import { whatWouldDecide } from './what-would-decide.js'
import { witnessOf } from './witness.js'

/**
 * Is there a way from a port to a target that passes none of the barriers?
 *
 * Yes only by a way that is surely there and surely free, which is the witness. No only if even everything that may be there
 * leaves none; the witness is then a blocked way in full, with the first thing that blocks it, if any way is drawn at all.
 * Otherwise it cannot be told: the witness is a way that may be, `missing` what would decide. Never throws.
 *
 * @param from a port, or a component with the medium to start in
 * @param isTarget what is looked for; a port where the walk begins counts too
 * @param search what the way may not pass; nothing said means any way counts
 *
 * @example
 * const relief = reachesWithout(network, { component: 'B1', medium: 'heatingWater' }, (thing) => thing.kind.name === 'reliefValve', { closing: true })
 */
export function reachesWithout(network: Network, from: Start, isTarget: IsTarget, search: Search = {}): NetworkAnswer {
  const graph = network.graph()
  const start = startPorts(graph, from)
  if (start.missing.length > 0) return { truth: 0, witness: [], missing: start.missing, visited: 0 }
  const { sure, perhaps } = bothWalks(graph, start.ports, {
    surely: (passage) => blocks(passage, search) === false,
    possibly: (passage) => blocks(passage, search) !== true,
    isGoal: (node) => isTargetAt(node, isTarget, search) === true,
    mayBeGoal: (node) => isTargetAt(node, isTarget, search) !== false,
  })
  if (sure.found !== undefined) return reached(graph, sure, sure.found)
  const visited = sure.visited + perhaps.visited
  if (perhaps.found === undefined) return notReached(graph, start.ports, { isTarget, search, visited })
  const deciding = whatWouldDecide(graph, sure, isTarget, search)
  const witness = witnessOf(wayTo(perhaps.found, perhaps), graph)
  return { truth: 0, witness, missing: deciding.missing, visited: visited + deciding.visited }
}

function reached(graph: PortGraph, sure: Walk, found: string): NetworkAnswer {
  return { truth: 1, witness: witnessOf(wayTo(found, sure), graph), missing: [], visited: sure.visited }
}

interface Refused {
  readonly isTarget: IsTarget
  readonly search: Search
  readonly visited: number
}

/** Shows a way that would lead there if nothing blocked it. */
function notReached(graph: PortGraph, ports: readonly string[], { isTarget, search, visited }: Refused): NetworkAnswer {
  const blocked = walk(graph, ports, {
    passable: (passage) => passage.unknown === undefined,
    isGoal: (node) => isTargetAt(node, isTarget, search) === true,
  })
  const looked = { truth: -1, missing: [], visited: visited + blocked.visited } as const
  if (blocked.found === undefined) return { ...looked, witness: [] }
  const way = wayTo(blocked.found, blocked)
  return { ...looked, witness: witnessOf(way, graph), ...firstBlocking(way, search) }
}

function firstBlocking(way: readonly Station[], barriers: Barriers): Pick<NetworkAnswer, 'blockedBy' | 'blockedHow'> {
  const passage = way.find(({ by }) => by !== undefined && blocks(by, barriers) === true)?.by
  const blockedHow = passage && blockingOf(passage, barriers)
  if (passage?.owner === undefined || blockedHow === undefined) return {}
  return { blockedBy: passage.owner.id, blockedHow }
}
