import type { Network } from '../../network/index.js'
import { circulating } from './circulating.js'
import { heatingPassages } from './heating-passages.js'

/** The port where the branch of an expansion tank meets water that circulates; undefined where none is drawn. */
export function tankJunction(network: Network, tank: string): string | undefined {
  const { passages } = heatingPassages(network)
  const flowing = new Set(circulating(passages).flatMap(({ from, to }) => [from, to]))
  const next = new Map<string, string[]>()
  for (const { from, to } of passages) {
    next.set(from, (next.get(from) ?? []).concat(to))
    next.set(to, (next.get(to) ?? []).concat(from))
  }
  const seen = new Set([`${tank}.system`])
  for (const port of seen) {
    if (flowing.has(port)) return port
    for (const other of next.get(port) ?? []) seen.add(other)
  }
  return undefined
}
