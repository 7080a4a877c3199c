import type { Thing } from '../model/index.js'
import type { Passage } from './passage.js'

/** A port of a component, or what lies beyond all that is drawn in one group of media. */
export interface PortNode {
  /** `B1.supply`; the unlisted rest of heating water is `?heatingWater`. */
  readonly name: string
  /** Absent for the unlisted rest. */
  readonly component?: Thing
  readonly port: string
  /** Media that may meet in one pipe share a group. */
  readonly group: string
}

/** A passage as seen from one of its ports. */
export interface Link {
  readonly passage: Passage
  /** Name of the port it leads to. */
  readonly to: string
}

/** The installation as ports and the passages between them. */
export interface PortGraph {
  /** A port by its name; the unlisted rest of a group by `?` and the group. */
  readonly node: (name: string) => PortNode | undefined
  /** All ports of a component that may carry something. */
  readonly portsOf: (component: string) => readonly PortNode[]
  /** What leads on from a port. */
  readonly linksAt: (node: string) => readonly Link[]
}

/** A graph while it is drawn. Passages lead both ways; several may join the same two ports. */
export interface Drawing {
  readonly nodes: Map<string, PortNode>
  readonly links: Map<string, Link[]>
}

export function emptyDrawing(): Drawing {
  return { nodes: new Map(), links: new Map() }
}

/** Joins two ports that are drawn; a passage to a port that is not there leads nowhere and is left out. */
export function join({ nodes, links }: Drawing, one: string, other: string, passage: Passage): void {
  if (!nodes.has(one) || !nodes.has(other)) return
  linksOf(links, one).push({ passage, to: other })
  if (one !== other) linksOf(links, other).push({ passage, to: one })
}

function linksOf(links: Drawing['links'], name: string): Link[] {
  const found = links.get(name)
  if (found !== undefined) return found
  const fresh: Link[] = []
  links.set(name, fresh)
  return fresh
}
