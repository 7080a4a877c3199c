import { mediumGroup, type Thing } from '../model/index.js'
import type { Passage } from './passage.js'
import type { Link, PortGraph, PortNode } from './port-graph.js'

/** Pipe between two ports, or from a port into what is not drawn. */
export interface Pipe {
  readonly passage: Passage
  readonly from: string
  readonly to: string
}

/** Ports of one component that water passes between, with the pipes at them. What enters at some leaves at others. */
export interface Hub {
  readonly ports: ReadonlySet<string>
  readonly pipes: readonly Pipe[]
}

/** The heating water as hubs and pipes. */
export interface WaterHubs {
  readonly hubs: readonly Hub[]
  /** By port. The unlisted rest has none. */
  readonly hubAt: ReadonlyMap<string, Hub>
  /** The pipes that end at a port. */
  readonly pipesAt: (port: string) => readonly Pipe[]
}

const water = mediumGroup('heatingWater')

/** Gathers the hubs of all components and the pipes between them. */
export function waterHubs(graph: PortGraph, things: Iterable<Thing>): WaterHubs {
  const pipes = new Map<Passage, Pipe>()
  const hubs = [...things].flatMap((thing) => hubsOf(graph, thing, pipes))
  const hubAt = new Map(hubs.flatMap((hub) => [...hub.ports].map((port) => [port, hub] as const)))
  const ends = new Map<string, Pipe[]>()
  for (const pipe of pipes.values()) for (const end of [pipe.from, pipe.to]) noteEnd(ends, end, pipe)
  return { hubs, hubAt, pipesAt: (port) => ends.get(port) ?? [] }
}

function hubsOf(graph: PortGraph, thing: Thing, pipes: Map<Passage, Pipe>): readonly Hub[] {
  const left = new Set(
    graph
      .portsOf(thing.id)
      .filter(isWater)
      .map(({ name }) => name),
  )
  const hubs: Hub[] = []
  for (const port of left) {
    const ports = joinedTo(graph, port, left)
    for (const each of ports) left.delete(each)
    hubs.push({ ports, pipes: [...ports].flatMap((each) => pipesAt(graph, each, { ports, pipes })) })
  }
  return hubs
}

function joinedTo(graph: PortGraph, port: string, among: ReadonlySet<string>): ReadonlySet<string> {
  const ports = new Set([port])
  // A set gives what is added while it is read: it is the queue as well.
  for (const at of ports) {
    for (const { to } of graph.linksAt(at).filter((link) => isInside(link) && among.has(link.to))) ports.add(to)
  }
  return ports
}

interface Gathering {
  readonly ports: ReadonlySet<string>
  readonly pipes: Map<Passage, Pipe>
}

/** A pipe from a component to itself moves nothing that matters elsewhere. */
function pipesAt(graph: PortGraph, from: string, { ports, pipes }: Gathering): readonly Pipe[] {
  const leading = graph.linksAt(from).filter((link) => !isInside(link) && !ports.has(link.to))
  return leading.map((link) => pipeOf(from, link, pipes))
}

function pipeOf(from: string, { passage, to }: Link, pipes: Map<Passage, Pipe>): Pipe {
  const found = pipes.get(passage)
  if (found !== undefined) return found
  const pipe = { passage, from, to }
  pipes.set(passage, pipe)
  return pipe
}

function noteEnd(ends: Map<string, Pipe[]>, end: string, pipe: Pipe): void {
  const found = ends.get(end)
  if (found === undefined) ends.set(end, [pipe])
  else found.push(pipe)
}

/** A passage through a component, not along a line and not into the unknown. */
function isInside({ passage }: Link): boolean {
  return passage.unknown === undefined && passage.owner?.path === undefined
}

function isWater({ group }: PortNode): boolean {
  return group === water
}

/** The pipe from one port to another, whichever way it is listed. */
export function pipeBetween(from: string, to: string, { hubAt, pipesAt }: WaterHubs): Pipe | undefined {
  return pipesAt(hubAt.has(from) ? from : to).find((each) => joins(each, from, to))
}

function joins(pipe: Pipe, one: string, other: string): boolean {
  return (pipe.from === one && pipe.to === other) || (pipe.from === other && pipe.to === one)
}
