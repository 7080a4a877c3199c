import type { Installation } from '../model/index.js'
import { drawGraph } from './draw-graph.js'
import { openFlow, type Flow } from './open-flow.js'
import type { PortGraph } from './port-graph.js'

/** An installation whose lines can be asked about. Frozen; the graph behind it is drawn at the first question. */
export interface Network {
  readonly installation: Installation
  /** Ports and passages, drawn at the first question. */
  readonly graph: () => PortGraph
  /** Directions of the heating water, found at the first question that asks for them. */
  readonly flow: () => Flow
}

/**
 * Opens the drawn lines of an installation for questions of order and reach. Costs nothing until the first question, then
 * once as much as there are ports and passages. Never throws: a line that names something not listed leads into the unknown.
 *
 * @example
 * const network = openNetwork(readInstallation(document, model))
 */
export function openNetwork(installation: Installation): Network {
  let drawn: PortGraph | undefined
  let directions: Flow | undefined
  const graph = (): PortGraph => (drawn ??= drawGraph(installation))
  const flow = (): Flow => (directions ??= openFlow(graph(), installation.things.values()))
  return Object.freeze({ installation, graph, flow })
}
