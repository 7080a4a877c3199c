import type { Thing } from '../model/index.js'
import { flowDirections, type FlowDirections } from './flow-directions.js'
import { disputesIn, type Disputes } from './disputes.js'
import type { FlowEnd } from './flow-end.js'
import { isCountedPort } from './component-ports.js'
import type { PortGraph, PortNode } from './port-graph.js'
import { stillPipes } from './still-pipes.js'
import type { MissingFact, Told } from './told.js'
import { pipeBetween, waterHubs, type Pipe, type WaterHubs } from './water-hubs.js'

/**
 * Which way water goes from one port to another; nothing where it cannot be told. `with` is said only where what is drawn
 * closes a circuit: elsewhere the water may stand.
 */
export type FlowAlong = 'with' | 'against' | 'still' | undefined

/** The directions of the heating water while the circuit runs. */
export interface Flow {
  /** Of a passage walked from one of its ports to the other. */
  readonly along: (from: string, to: string) => FlowAlong
  /** Whether water passes through a component while the circuit runs; where it cannot be told, what would tell. */
  readonly passes: (component: string) => Told
  /** Where what is drawn says opposite things of the water; nothing where it nowhere does. */
  readonly disputes: Disputes | undefined
}

/**
 * Finds the directions: ports that say `in` and `out` tell those of their pipes, and what enters a component leaves it again
 * by the only pipe left. A pipe that leads into the unknown may carry flow. Of a pipe whose two ends say opposite things
 * nothing is told but that they do. Costs as much as there are passages.
 */
export function openFlow(graph: PortGraph, things: Iterable<Thing>): Flow {
  const water = waterHubs(graph, things)
  const directions = flowDirections(graph, water)
  const stillAsDrawn = stillPipes(water, ({ passage }) => passage.unknown === undefined)
  const passes = (component: string): Told => {
    const pipes = graph.portsOf(component).flatMap(({ name }) => water.pipesAt(name))
    if (pipes.some((pipe) => !stillAsDrawn.has(pipe))) return true
    return pipes.every((pipe) => directions.still.has(pipe)) ? false : anotherLine
  }
  const stands = (port: string): boolean => water.pipesAt(port).every((pipe) => stillAsDrawn.has(pipe))
  const along = (from: string, to: string): FlowAlong => {
    if (areChained(graph.node(from), graph.node(to))) return undefined
    const told = alongOf(from, to, water, directions)
    return told === 'with' && (stands(from) || stands(to)) ? undefined : told
  }
  return { along: remembering(along), passes, disputes: disputesIn(graph, water, directions) }
}

/** Many questions walk the same passages. */
function remembering(along: Flow['along']): Flow['along'] {
  const known = new Map<string, Map<string, FlowAlong>>()
  return (from, to) => {
    const there = known.get(from) ?? new Map<string, FlowAlong>()
    known.set(from, there)
    if (there.has(to)) return there.get(to)
    const found = along(from, to)
    there.set(to, found)
    return found
  }
}

/** Ports that are counted and joined in a row: water passes by those between, whatever they do. */
function areChained(one: PortNode | undefined, other: PortNode | undefined): boolean {
  const thing = one?.component
  if (thing === undefined || other?.component !== thing) return false
  return isCountedPort(thing, one?.port ?? '') && isCountedPort(thing, other.port)
}

const anotherLine: MissingFact = { subject: 'line', fact: 'count' }

function alongOf(from: string, to: string, water: WaterHubs, directions: FlowDirections): FlowAlong {
  if (water.hubAt.get(from)?.ports.has(to) !== true) return alongPipe(from, to, water, directions)
  const [entering, leaving] = [from, to].map((port) => atPort(water.pipesAt(port), port, directions))
  if (entering === 'still' || leaving === 'still') return 'still'
  if (entering === 'leaves' || leaving === 'enters') return 'against'
  return entering === 'enters' && leaving === 'leaves' ? 'with' : undefined
}

function alongPipe(from: string, to: string, water: WaterHubs, directions: FlowDirections): FlowAlong {
  const pipe = pipeBetween(from, to, water)
  if (pipe === undefined) return undefined
  const end = endOf(pipe, from, directions)
  if (end === undefined || end === 'still') return end
  return end === 'leaves' ? 'with' : 'against'
}

/** What the water does at a port of a component. */
function atPort(
  [pipe, more]: readonly Pipe[],
  port: string,
  directions: FlowDirections,
): FlowEnd | 'still' | undefined {
  if (pipe === undefined) return 'still'
  return more === undefined ? endOf(pipe, port, directions) : undefined
}

function endOf(pipe: Pipe, port: string, { still, beginnings }: FlowDirections): FlowEnd | 'still' | undefined {
  if (still.has(pipe)) return 'still'
  const [beginning, other] = beginnings.get(pipe) ?? []
  if (beginning === undefined || other !== undefined) return undefined
  return beginning === port ? 'leaves' : 'enters'
}
