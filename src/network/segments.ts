import { portsOf, type Medium, type PathItem, type Thing } from '../model/index.js'

/** A port on a line. */
export interface LinePort {
  readonly component: string
  readonly port: string
}

/** A piece of a line between two neighbors of its path. An end that nobody knows is absent. */
export interface Segment {
  readonly line: Thing
  readonly from?: LinePort
  readonly to?: LinePort
}

/** Ports that lines are drawn to, with the medium of the line. */
export type PortsDrawn = ReadonlyMap<string, Medium | undefined>

/** The pieces of a line. Whatever names no port of a listed component counts as unknown. */
export function segmentsOf(line: Thing, things: ReadonlyMap<string, Thing>): readonly Segment[] {
  const path = line.path ?? []
  return path.slice(1).flatMap((item, index) => {
    const before = path[index]
    const from = before === undefined ? undefined : listed(leavingPort(before), things)
    const to = listed(enteringPort(item), things)
    if (from === undefined && to === undefined) return []
    return [{ line, ...(from === undefined ? {} : { from }), ...(to === undefined ? {} : { to }) }]
  })
}

/** By component, the ports that some line ends at or runs through, with what that line carries. */
export function portsOnLines(segments: readonly Segment[]): ReadonlyMap<string, PortsDrawn> {
  const drawn = new Map<string, Map<string, Medium | undefined>>()
  for (const { line, from, to } of segments) {
    if (from !== undefined) note(from, line, drawn)
    if (to !== undefined) note(to, line, drawn)
  }
  return drawn
}

function note({ component, port }: LinePort, line: Thing, drawn: Map<string, Map<string, Medium | undefined>>): void {
  const ports = drawn.get(component)
  if (ports === undefined) drawn.set(component, new Map([[port, line.medium]]))
  else ports.set(port, line.medium)
}

function leavingPort(item: PathItem): LinePort | undefined {
  if (item.type === 'through') return { component: item.component, port: item.leave }
  return item.type === 'port' ? item : undefined
}

function enteringPort(item: PathItem): LinePort | undefined {
  if (item.type === 'through') return { component: item.component, port: item.enter }
  return item.type === 'port' ? item : undefined
}

function listed(end: LinePort | undefined, things: ReadonlyMap<string, Thing>): LinePort | undefined {
  const component = end === undefined ? undefined : things.get(end.component)
  if (end === undefined || component?.kind.section !== 'components') return undefined
  return portsOf(component.kind).has(end.port) ? end : undefined
}
