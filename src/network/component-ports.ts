import { groupsMeeting, mediumGroup, portsOf, type Thing } from '../model/index.js'
import type { PortsDrawn } from './segments.js'
import type { MissingFact } from './told.js'

/** A port that a component has, or may have. */
export interface ComponentPort {
  readonly port: string
  /** `B1.supply`. An open port that suits either water stands once in each, the second time as `RV1.inlet?potable`. */
  readonly name: string
  /** The group of media that it carries. */
  readonly group: string
  /** No line is drawn here and nothing says that it is plugged: it may lead anywhere. */
  readonly openEnd?: MissingFact
}

/** The ports of a component, given those that lines are drawn to. Of counted ports not used, one stands for all. */
export function portsOfComponent(thing: Thing, drawn: PortsDrawn): readonly ComponentPort[] {
  const settled = new Set([...drawn.keys(), ...cappedPorts(thing)])
  return Object.keys(thing.kind.ports).flatMap((port) => {
    if (port.endsWith('*')) return countedPorts(thing, port, { settled, drawn })
    return settled.has(port) ? settledPort(thing, port, drawn) : openPorts(thing, port, { port, fact: port })
  })
}

/** Whether a port is one of those that `branch*` stands for. */
export function isCountedPort(thing: Thing, port: string): boolean {
  return port.endsWith('*') || !Object.hasOwn(thing.kind.ports, port)
}

/** Ports said to be plugged. An entry with `unknown` in it still says so of those it names. */
function cappedPorts(thing: Thing): readonly string[] {
  const value = thing.entries.capped?.value
  return value?.type === 'list' ? value.members : []
}

function settledPort(thing: Thing, port: string, drawn: PortsDrawn): readonly ComponentPort[] {
  const medium = portsOf(thing.kind).mediumOf(port)
  if (medium === undefined) return []
  const groups = groupsMeeting(mediumGroup(medium))
  const carried = drawn.get(port)
  const group = groups.find((each) => carried !== undefined && each === mediumGroup(carried)) ?? groups[0]
  return group === undefined ? [] : [{ port, name: `${thing.id}.${port}`, group }]
}

interface Open {
  readonly port: string
  readonly fact: string
}

function openPorts(thing: Thing, declared: string, { port, fact }: Open): readonly ComponentPort[] {
  const medium = thing.kind.ports[declared]
  const groups = medium === undefined ? [] : groupsMeeting(mediumGroup(medium))
  const openEnd = { subject: thing.id, fact }
  return groups.map((group, index) => ({
    port,
    name: index === 0 ? `${thing.id}.${port}` : `${thing.id}.${port}?${group}`,
    group,
    openEnd,
  }))
}

interface Settled {
  readonly settled: ReadonlySet<string>
  readonly drawn: PortsDrawn
}

function countedPorts(thing: Thing, pattern: string, { settled, drawn }: Settled): readonly ComponentPort[] {
  const prefix = pattern.slice(0, -1)
  const numbered = [...settled].filter((port) => port.startsWith(prefix) && isCountedPort(thing, port))
  return [...numbered.flatMap((port) => settledPort(thing, port, drawn)), ...oneMore(thing, pattern, settled)]
}

function oneMore(thing: Thing, pattern: string, settled: ReadonlySet<string>): readonly ComponentPort[] {
  const prefix = pattern.slice(0, -1)
  const { low, high } = countOf(thing)
  let number = 1
  while (settled.has(`${prefix}${number}`)) number += 1
  if (number > high) return []
  const port = `${prefix}${number}`
  if (number <= low) return openPorts(thing, pattern, { port, fact: port })
  return openPorts(thing, pattern, { port: pattern, fact: thing.kind.portsCountedBy ?? pattern })
}

function countOf(thing: Thing): { readonly low: number; readonly high: number } {
  const value = thing.kind.portsCountedBy === undefined ? undefined : thing.entries[thing.kind.portsCountedBy]?.value
  return value?.type === 'quantity' ? value : { low: 0, high: Infinity }
}
