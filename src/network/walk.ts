import type { Passage } from './passage.js'
import type { Link, PortGraph, PortNode } from './port-graph.js'

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

/** Whether a walk goes on from one port to the next. */
export type Passable = (passage: Passage, to: string, from: string) => boolean

interface Gait {
  readonly passable: Passable
  readonly isGoal?: (node: PortNode) => boolean
}

/** Walks outward from some ports, each port once: the cost is the number of passages. */
export function walk(graph: PortGraph, starts: readonly string[], { passable, isGoal }: Gait): Walk {
  const reached = new Map<string, Step | undefined>(starts.map((start) => [start, undefined]))
  let visited = 0
  // A map gives its keys in the order of adding, those added while it is read included: it is the queue as well.
  for (const at of reached.keys()) {
    const node = graph.node(at)
    if (node !== undefined && isGoal?.(node) === true) return { reached, found: at, visited }
    const links = graph.linksAt(at)
    visited += links.length
    stepOn(at, links, reached, passable)
  }
  return { reached, visited }
}

function stepOn(
  from: string,
  links: readonly Link[],
  reached: Map<string, Step | undefined>,
  passable: Passable,
): void {
  for (const { passage, to } of links) {
    if (!reached.has(to) && passable(passage, to, from)) reached.set(to, { from, passage })
  }
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
