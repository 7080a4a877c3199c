import { mediumGroup, portsOf, type Thing } from '../model/index.js'
import type { MissingFact } from './told.js'

/** A port that a component has, or may have. */
export interface ComponentPort {
  readonly port: string
  /** The group of media that it carries. */
  readonly group: string
  /** No line is drawn here and nothing says that it is plugged: it may lead anywhere. */
  readonly openEnd?: MissingFact
}

/** The ports of a component, given those that lines are drawn to. Of counted ports not used, one stands for all. */
export function portsOfComponent(thing: Thing, drawn: ReadonlySet<string>): readonly ComponentPort[] {
  const capped = cappedPorts(thing)
  const isSettled = (port: string): boolean => drawn.has(port) || capped.has(port)
  return Object.keys(thing.kind.ports).flatMap((port) => {
    if (port.endsWith('*')) return countedPorts(thing, port, { settled: new Set([...drawn, ...capped]) })
    return isSettled(port) ? portAt(thing, port) : portAt(thing, port, { subject: thing.id, fact: port })
  })
}

/** Whether a port is one of those that `branch*` stands for. */
export function isCountedPort(thing: Thing, port: string): boolean {
  return port.endsWith('*') || !Object.hasOwn(thing.kind.ports, port)
}

/** Ports said to be plugged. An entry with `unknown` in it still says so of those it names. */
function cappedPorts(thing: Thing): ReadonlySet<string> {
  const value = thing.entries.capped?.value
  return new Set(value?.type === 'list' ? value.members : [])
}

interface Settled {
  readonly settled: ReadonlySet<string>
}

function countedPorts(thing: Thing, pattern: string, { settled }: Settled): readonly ComponentPort[] {
  const prefix = pattern.slice(0, -1)
  const numbered = [...settled].filter((port) => port.startsWith(prefix) && isCountedPort(thing, port))
  return [...numbered.flatMap((port) => portAt(thing, port)), ...oneMore(thing, pattern, { settled })]
}

function oneMore(thing: Thing, pattern: string, { settled }: Settled): readonly ComponentPort[] {
  const prefix = pattern.slice(0, -1)
  const { low, high } = countOf(thing)
  let number = 1
  while (settled.has(`${prefix}${number}`)) number += 1
  if (number > high) return []
  if (number <= low) return openPort(thing, pattern, { port: `${prefix}${number}`, fact: `${prefix}${number}` })
  return openPort(thing, pattern, { port: pattern, fact: thing.kind.portsCountedBy ?? pattern })
}

function openPort(thing: Thing, pattern: string, open: { port: string; fact: string }): readonly ComponentPort[] {
  const medium = thing.kind.ports[pattern]
  if (medium === undefined) return []
  return [{ port: open.port, group: mediumGroup(medium), openEnd: { subject: thing.id, fact: open.fact } }]
}

function countOf(thing: Thing): { readonly low: number; readonly high: number } {
  const value = thing.kind.portsCountedBy === undefined ? undefined : thing.entries[thing.kind.portsCountedBy]?.value
  return value?.type === 'quantity' ? value : { low: 0, high: Infinity }
}

function portAt(thing: Thing, port: string, openEnd?: MissingFact): readonly ComponentPort[] {
  const medium = portsOf(thing.kind).mediumOf(port)
  if (medium === undefined) return []
  return [openEnd === undefined ? { port, group: mediumGroup(medium) } : { port, group: mediumGroup(medium), openEnd }]
}
