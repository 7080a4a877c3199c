import type { Thing } from '../model/index.js'
import { bars, blocks, type Barriers } from './barriers.js'
import type { Network } from './open-network.js'
import type { PortGraph } from './port-graph.js'
import { startPorts, type Start } from './start.js'
import { uniqueFacts, type MissingFact } from './told.js'
import { walk, type Walk } from './walk.js'
import { openQuestions } from './what-would-decide.js'

/** What is reached from a port, and whether that is all. */
export interface Reached {
  /** Components surely reached, nearest first; the one where the walk began is the first. One that is not passed through counts as reached. */
  readonly things: readonly Thing[]
  /** Lines of which at least a piece is surely passed. */
  readonly lines: readonly Thing[]
  /** Whether there may be more of either. */
  readonly open: boolean
  /** What would tell; empty unless open. */
  readonly missing: readonly MissingFact[]
  readonly visited: number
}

/**
 * Everything that a walk from a port comes to without passing the barriers: with `closing` and `checking` a closed volume,
 * with `things` all that is met before those things. Never throws.
 *
 * @example
 * const volume = reachedThings(network, { component: 'B1', medium: 'heatingWater' }, { closing: true, crossing: true })
 */
export function reachedThings(network: Network, from: Start, barriers: Barriers = {}): Reached {
  const graph = network.graph()
  const start = startPorts(graph, from)
  const sure = walk(graph, start.ports, { passable: (passage) => blocks(passage, barriers) === false })
  const border = openQuestions(graph, sure, barriers, () => true)
  const passed = linesPassed(graph, sure, barriers)
  const missing = uniqueFacts([...start.missing, ...border.missing])
  const visited = sure.visited + border.visited + passed.visited
  return { things: componentsIn(graph, sure), lines: passed.lines, open: missing.length > 0, missing, visited }
}

function componentsIn(graph: PortGraph, sure: Walk): readonly Thing[] {
  const found = [...sure.reached.keys()].flatMap((name) => graph.node(name)?.component ?? [])
  return [...new Set(found)]
}

/** A piece that leads into the unknown is pipe of its line all the same. */
function linesPassed(
  graph: PortGraph,
  sure: Walk,
  barriers: Barriers,
): { readonly lines: readonly Thing[]; readonly visited: number } {
  const links = [...sure.reached.keys()].flatMap((name) => graph.linksAt(name))
  const lines = links.flatMap(({ passage }) => {
    const { owner } = passage
    return owner?.path !== undefined && bars(passage, barriers) === false ? [owner] : []
  })
  return { lines: [...new Set(lines)], visited: links.length }
}
