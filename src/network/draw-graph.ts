import { MultiUndirectedGraph } from 'graphology'
import { groupsMeeting, media, mediumGroup, portsOf, type Installation, type Thing } from '../model/index.js'
import { portsOfComponent } from './component-ports.js'
import { alongLine, intoUnknown, throughUnlisted, type Passage } from './passage.js'
import type { Link, PortGraph, PortNode } from './port-graph.js'
import { portsOnLines, segmentsOf, type LinePort, type Segment } from './segments.js'
import { unlistedCrossings } from './unlisted-crossings.js'
import { waysThrough } from './ways-through.js'

type Graph = MultiUndirectedGraph<PortNode, Passage>

/** Draws what is listed, and in each group of media one node for all that may be there beside it. */
export function drawGraph(installation: Installation): PortGraph {
  const graph: Graph = new MultiUndirectedGraph()
  const ports = new Map<string, readonly PortNode[]>()
  const things = [...installation.things.values()]
  const segments = things.flatMap((thing) => segmentsOf(thing, installation.things))
  const drawn = portsOnLines(segments)
  for (const group of new Set(media.map(mediumGroup))) addNode(graph, { name: beyond(group), port: 'unknown', group })
  for (const thing of things)
    if (thing.kind.section === 'components') ports.set(thing.id, addComponent(graph, thing, drawn.get(thing.id)))
  for (const segment of segments) addSegment(graph, segment, installation)
  for (const { kind, groups } of unlistedCrossings(installation))
    join(graph, [beyond(groups[0]), beyond(groups[1])], throughUnlisted(kind))
  return { node: nodesIn(graph), portsOf: (component) => ports.get(component) ?? [], linksAt: linksIn(graph) }
}

function nodesIn(graph: Graph): PortGraph['node'] {
  return (name) => (graph.hasNode(name) ? graph.getNodeAttributes(name) : undefined)
}

/** Gathers the links of a port when it is first come to: many questions walk over the same ports. */
function linksIn(graph: Graph): PortGraph['linksAt'] {
  const gathered = new Map<string, readonly Link[]>()
  return (node) => {
    const found = gathered.get(node)
    if (found !== undefined) return found
    const links: Link[] = []
    graph.forEachEdge(node, (_edge, passage, source, target) => {
      links.push({ passage, to: source === node ? target : source })
    })
    gathered.set(node, links)
    return links
  }
}

const beyond = (group: string): string => `?${group}`
const portName = (component: string, port: string): string => `${component}.${port}`
const nothing: ReadonlySet<string> = new Set()

function addComponent(graph: Graph, thing: Thing, drawn: ReadonlySet<string> = nothing): readonly PortNode[] {
  const ports = portsOfComponent(thing, drawn)
  const nodes = ports.map(({ port, group }) =>
    addNode(graph, { name: portName(thing.id, port), component: thing, port, group }),
  )
  for (const { port, group, openEnd } of ports) {
    if (openEnd === undefined) continue
    for (const behind of groupsMeeting(group))
      join(graph, [portName(thing.id, port), beyond(behind)], intoUnknown(openEnd))
  }
  for (const { from, to, passage } of waysThrough(thing, ports))
    join(graph, [portName(thing.id, from.port), portName(thing.id, to.port)], passage)
  return nodes
}

function addSegment(graph: Graph, { line, from, to }: Segment, installation: Installation): void {
  const ends = [from, to].filter((end) => end !== undefined)
  const [one, other] = ends.map(({ component, port }) => portName(component, port))
  const group = ends[0] === undefined ? undefined : groupOf(line, ends[0], installation)
  if (one === undefined || group === undefined) return
  if (other === undefined) join(graph, [one, beyond(group)], intoUnknown({ subject: line.id, fact: 'path' }, line))
  else join(graph, [one, other], alongLine(line))
}

function groupOf(line: Thing, { component, port }: LinePort, { things }: Installation): string | undefined {
  const kind = things.get(component)?.kind
  const medium = line.medium ?? (kind === undefined ? undefined : portsOf(kind).mediumOf(port))
  return medium === undefined ? undefined : mediumGroup(medium)
}

function addNode(graph: Graph, node: PortNode): PortNode {
  graph.mergeNode(node.name, node)
  return node
}

function join(graph: Graph, [from, to]: readonly [string, string], passage: Passage): void {
  graph.addUndirectedEdge(from, to, passage)
}
