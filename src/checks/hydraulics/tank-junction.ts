import type { Hydraulics } from './hydraulics-of.js'

/** The port where the branch of an expansion tank meets water that circulates; undefined where none is drawn. */
export function tankJunction({ passages, circuits }: Hydraulics, tank: string): string | undefined {
  const flowing = new Set(circuits.flatMap(({ from, to }) => [from, to]))
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
