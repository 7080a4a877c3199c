import type { NetworkAnswer } from './network-answer.js'
import type { Network } from './open-network.js'
import { startPorts, type Start } from './start.js'
import { uniqueFacts, type MissingFact } from './told.js'

/**
 * Is anything drawn from a port, or from one of the ports of a component? Yes if a line is, though it may lead into the
 * unknown; no if every port is capped. Where nothing is drawn and nothing capped it cannot be told, and `missing` names the
 * ports. Never throws.
 *
 * @example
 * const nothingDrawn = isConnected(network, { component: 'B1', port: 'condensate' }).truth === 0
 */
export function isConnected(network: Network, from: Start): NetworkAnswer {
  const graph = network.graph()
  const start = startPorts(graph, from)
  const open: MissingFact[] = [...start.missing]
  let visited = 0
  for (const port of start.ports) {
    const links = graph.linksAt(port)
    visited += links.length
    const line = links.find(({ passage }) => passage.owner?.path !== undefined)?.passage.owner
    if (line !== undefined) return { truth: 1, witness: [port, line.id], missing: [], visited }
    open.push(...links.flatMap(({ passage }) => passage.unknown ?? []))
  }
  const missing = uniqueFacts(open)
  return { truth: missing.length > 0 ? 0 : -1, witness: [], missing, visited }
}
