import type { FixedHead, FlowEdge } from './flow-network.js'

type Ends = Pick<FlowEdge, 'from' | 'to'>

/** Names the first pump that has no way round to itself, or nothing. Nodes whose heads are given count as joined. */
export function wayRound(edges: readonly FlowEdge[], fixed: readonly FixedHead[]): string | undefined {
  const joined = fixed.map(({ node }) => ({ from: node, to: fixed[0]?.node ?? node }))
  const pumped = edges.filter(({ pump }) => pump !== undefined)
  const passive = partsOf(
    edges.filter(({ pump }) => pump === undefined),
    joined,
  )
  const doubtful = pumped.filter(({ from, to }) => !areJoined(passive, from, to))
  const dead = doubtful.find((edge) => {
    const others = edges.filter((other) => other !== edge)
    return !areJoined(partsOf(others, joined), edge.from, edge.to)
  })
  return dead && `${dead.name} has no circuit: no open way leads from its outlet back to its inlet.`
}

/** Node to the number of its part. */
function partsOf(edges: readonly Ends[], joined: readonly Ends[]): ReadonlyMap<string, number> {
  const parts = connectedParts([], [...edges, ...joined])
  return new Map(parts.flatMap((part, index) => part.map((node) => [node, index] as const)))
}

function areJoined(parts: ReadonlyMap<string, number>, one: string, other: string): boolean {
  return parts.has(one) && parts.get(one) === parts.get(other)
}

/** Nodes that edges join, part by part, in their order. */
export function connectedParts(nodes: readonly string[], edges: readonly Ends[]): readonly (readonly string[])[] {
  const around = new Map<string, string[]>(nodes.map((node) => [node, []]))
  for (const { from, to } of edges) {
    neighborsOf(around, from).push(to)
    neighborsOf(around, to).push(from)
  }
  const seen = new Set<string>()
  return [...around.keys()].flatMap((node) => (seen.has(node) ? [] : [reachedFrom(node, around, seen)]))
}

function neighborsOf(around: Map<string, string[]>, node: string): string[] {
  const known = around.get(node) ?? []
  around.set(node, known)
  return known
}

function reachedFrom(
  start: string,
  around: ReadonlyMap<string, readonly string[]>,
  seen: Set<string>,
): readonly string[] {
  const part = [start]
  seen.add(start)
  for (const node of part) {
    const next = (around.get(node) ?? []).filter((other) => !seen.has(other))
    for (const other of new Set(next)) {
      seen.add(other)
      part.push(other)
    }
  }
  return part
}
