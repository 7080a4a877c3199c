import { media, mediumGroup, type Installation, type Thing } from '../model/index.js'
import { portsOfComponent } from './component-ports.js'
import { alongLine, intoUnknown, throughUnlisted } from './passage.js'
import { emptyDrawing, join, type Drawing, type PortGraph, type PortNode } from './port-graph.js'
import { portsOnLines, segmentsOf, type PortsDrawn, type Segment } from './segments.js'
import { unlistedCrossings } from './unlisted-crossings.js'
import { waysThrough } from './ways-through.js'

/** Draws what is listed, and in each group of media one node for all that may be there beside it. */
export function drawGraph(installation: Installation): PortGraph {
  const drawing = emptyDrawing()
  const ports = new Map<string, readonly PortNode[]>()
  const things = [...installation.things.values()]
  const segments = things.flatMap((thing) => segmentsOf(thing, installation.things))
  const drawn = portsOnLines(segments)
  for (const group of new Set(media.map(mediumGroup))) addNode(drawing, { name: beyond(group), port: 'unknown', group })
  for (const thing of things)
    if (thing.kind.section === 'components') ports.set(thing.id, addComponent(drawing, thing, drawn.get(thing.id)))
  for (const segment of segments) addSegment(drawing, segment)
  for (const { kind, groups } of unlistedCrossings(installation))
    join(drawing, beyond(groups[0]), beyond(groups[1]), throughUnlisted(kind))
  return {
    node: (name) => drawing.nodes.get(name),
    portsOf: (component) => ports.get(component) ?? [],
    linksAt: (name) => drawing.links.get(name) ?? [],
  }
}

const beyond = (group: string): string => `?${group}`
const nothing: PortsDrawn = new Map()

function addComponent(drawing: Drawing, thing: Thing, drawn: PortsDrawn = nothing): readonly PortNode[] {
  const ports = portsOfComponent(thing, drawn)
  const nodes = ports.map(({ port, name, group }) => addNode(drawing, { name, component: thing, port, group }))
  for (const { name, group, openEnd } of ports) {
    if (openEnd !== undefined) join(drawing, name, beyond(group), intoUnknown(openEnd))
  }
  for (const { from, to, passage } of waysThrough(thing, ports)) join(drawing, from.name, to.name, passage)
  return nodes
}

function addSegment(drawing: Drawing, { line, from, to }: Segment): void {
  const [one, other] = [from, to].flatMap((end) => (end === undefined ? [] : [`${end.component}.${end.port}`]))
  if (one === undefined) return
  if (other !== undefined) join(drawing, one, other, alongLine(line))
  else join(drawing, one, behindLine(drawing, line, one), intoUnknown({ subject: line.id, fact: 'path' }, line))
}

/** What a line leads to where nobody knows: the rest of its medium, or of that of its port if it names none. */
function behindLine(drawing: Drawing, line: Thing, port: string): string {
  return beyond(line.medium === undefined ? (drawing.nodes.get(port)?.group ?? '') : mediumGroup(line.medium))
}

function addNode(drawing: Drawing, node: PortNode): PortNode {
  drawing.nodes.set(node.name, node)
  return node
}
