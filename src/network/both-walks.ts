import type { PortGraph, PortNode } from './port-graph.js'
import { type Passable, walk, type Walk } from './walk.js'

/** Which passages are surely free and which may be, and where a walk ends. */
export interface Free {
  readonly surely: Passable
  readonly possibly: Passable
  readonly isGoal?: (node: PortNode) => boolean
  /** Holds of every goal as well. */
  readonly mayBeGoal?: (node: PortNode) => boolean
}

/** What is surely reached, and what may be: where nothing on the border is in doubt, both walks are one. */
export function bothWalks(
  graph: PortGraph,
  starts: readonly string[],
  { surely, possibly, isGoal = never, mayBeGoal = never }: Free,
): { readonly sure: Walk; readonly perhaps: Walk } {
  const noted = { doubt: false }
  const passable: Passable = (...step) => {
    if (surely(...step)) return true
    noted.doubt ||= possibly(...step)
    return false
  }
  const sure = walk(graph, starts, { passable, isGoal })
  if (sure.found !== undefined) return { sure, perhaps: sure }
  if (noted.doubt) return { sure, perhaps: walk(graph, starts, { passable: possibly, isGoal: mayBeGoal }) }
  const found = [...sure.reached.keys()].find((name) => {
    const node = graph.node(name)
    return node !== undefined && mayBeGoal(node)
  })
  return { sure, perhaps: found === undefined ? sure : { ...sure, found } }
}

function never(): boolean {
  return false
}
