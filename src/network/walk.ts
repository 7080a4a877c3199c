import type { Passage } from './passage.js'
import type { PortGraph, PortNode } from './port-graph.js'

/** How a port was come to. */
export interface Step {
  readonly from: string
  readonly passage: Passage
}

/** All that was reached, in the order of reaching. */
export interface Walk {
  /** By port; where the walk began there is no step. */
  readonly reached: ReadonlyMap<string, Step | undefined>
  /** The nearest port that was looked for; the walk ends there. */
  readonly found?: string
  readonly visited: number
}

interface Gait {
  readonly passable: (passage: Passage, to: string) => boolean
  readonly isGoal?: (node: PortNode) => boolean
}

/** Walks outward from some ports, each port once: the cost is the number of passages. */
export function walk(graph: PortGraph, starts: readonly string[], { passable, isGoal }: Gait): Walk {
  const reached = new Map<string, Step | undefined>(starts.map((start) => [start, undefined]))
  const queue = [...reached.keys()]
  let visited = 0
  // The queue grows while it is read.
  for (const at of queue) {
    const node = graph.node(at)
    if (node !== undefined && isGoal?.(node) === true) return { reached, found: at, visited }
    graph.forEachPassage(at, (passage, to) => {
      visited += 1
      if (reached.has(to) || !passable(passage, to)) return
      reached.set(to, { from: at, passage })
      queue.push(to)
    })
  }
  return { reached, visited }
}

/** A port on a way, with the passage that led to it. */
export interface Station {
  readonly name: string
  readonly by?: Passage
}

/** The way that was walked to a port, from its beginning. */
export function wayTo(end: string, { reached }: Walk): readonly Station[] {
  const stations: Station[] = []
  let at: string | undefined = end
  while (at !== undefined) {
    const step: Step | undefined = reached.get(at)
    stations.push(step === undefined ? { name: at } : { name: at, by: step.passage })
    at = step?.from
  }
  return stations.reverse()
}
