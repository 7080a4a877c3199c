import { MultiUndirectedGraph } from 'graphology'
import { media, mediumGroup, type Installation, type Thing } from '../model/index.js'
import { portsOfComponent } from './component-ports.js'
import { alongLine, intoUnknown, throughUnlisted, type Passage } from './passage.js'
import type { Link, PortGraph, PortNode } from './port-graph.js'
import { portsOnLines, segmentsOf, type PortsDrawn, type Segment } from './segments.js'
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
  for (const segment of segments) addSegment(graph, segment)
  for (const { kind, groups } of unlistedCrossings(installation))
    graph.addUndirectedEdge(beyond(groups[0]), beyond(groups[1]), throughUnlisted(kind))
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
const nothing: PortsDrawn = new Map()

function addComponent(graph: Graph, thing: Thing, drawn: PortsDrawn = nothing): readonly PortNode[] {
  const ports = portsOfComponent(thing, drawn)
  const nodes = ports.map(({ port, name, group }) => addNode(graph, { name, component: thing, port, group }))
  for (const { name, group, openEnd } of ports) {
    if (openEnd !== undefined) graph.addUndirectedEdge(name, beyond(group), intoUnknown(openEnd))
  }
  for (const { from, to, passage } of waysThrough(thing, ports)) graph.addUndirectedEdge(from.name, to.name, passage)
  return nodes
}

function addSegment(graph: Graph, { line, from, to }: Segment): void {
  const [one, other] = [from, to].flatMap((end) => (end === undefined ? [] : [`${end.component}.${end.port}`]))
  if (one === undefined) return
  if (other !== undefined) graph.addUndirectedEdge(one, other, alongLine(line))
  else graph.addUndirectedEdge(one, behindLine(graph, line, one), intoUnknown({ subject: line.id, fact: 'path' }, line))
}

/** What a line leads to where nobody knows: the rest of its medium, or of that of its port if it names none. */
function behindLine(graph: Graph, line: Thing, port: string): string {
  return beyond(line.medium === undefined ? graph.getNodeAttribute(port, 'group') : mediumGroup(line.medium))
}

function addNode(graph: Graph, node: PortNode): PortNode {
  graph.mergeNode(node.name, node)
  return node
}
