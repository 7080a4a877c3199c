import { groupsMeeting, mediumGroup, type Medium } from '../model/index.js'
import type { PortGraph } from './port-graph.js'
import type { MissingFact } from './told.js'

/** One port of a component. */
export interface PortReference {
  readonly component: string
  readonly port: string
}

/** All ports of a component, or those of one medium and its group. */
export interface ComponentReference {
  readonly component: string
  readonly medium?: Medium
}

/** Where a way begins. */
export type Start = PortReference | ComponentReference

/** The ports to begin at; a component or port that is not there leaves a question. */
export interface StartPorts {
  readonly ports: readonly string[]
  readonly missing: readonly MissingFact[]
}

export function startPorts(graph: PortGraph, start: Start): StartPorts {
  const ports = graph.portsOf(start.component)
  if ('port' in start) {
    const found = ports.filter(({ port }) => port === start.port).map(({ name }) => name)
    return { ports: found, missing: found.length > 0 ? [] : [{ subject: start.component, fact: start.port }] }
  }
  const { component, medium } = start
  const groups = medium === undefined ? undefined : groupsMeeting(mediumGroup(medium))
  const found = ports.filter((port) => groups === undefined || groups.includes(port.group)).map(({ name }) => name)
  return { ports: found, missing: ports.length > 0 ? [] : [{ subject: component, fact: medium ?? 'ports' }] }
}
