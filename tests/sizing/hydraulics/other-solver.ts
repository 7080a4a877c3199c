/** An edge of the other solver: a law that rises through zero at `head`, in any one unit. */
export interface PlainEdge {
  readonly from: string
  readonly to: string
  /** Fall of head from `from` to `to` at a flow of either sign; rises with the flow. */
  readonly fall: (flow: number) => number
}

/**
 * Flows of a closed network by loops instead of nodes: a spanning tree, a loop for each edge outside it, and loop after loop
 * the flow round it that makes the falls add up to nothing, found by halving. It shares nothing with the library.
 *
 * @returns nothing where the loops push each other round for so long that it gives up
 */
export function flowsByLoops(edges: readonly PlainEdge[]): readonly number[] | undefined {
  const loops = loopsOf(edges)
  const flows = edges.map(() => 0)
  for (let round = 0; round < 500; round++) {
    const moved = loops.map((loop) => settleLoop(edges, flows, loop))
    if (Math.max(0, ...moved.map(Math.abs)) < 1e-12) return flows
  }
  return undefined
}

/** Edge numbers with the direction in which the loop goes through them. */
type Loop = readonly (readonly [edge: number, sign: 1 | -1])[]

function settleLoop(edges: readonly PlainEdge[], flows: number[], loop: Loop): number {
  const sum = (more: number): number =>
    loop.reduce((total, [edge, sign]) => total + sign * edges[edge]!.fall(flows[edge]! + sign * more), 0)
  let [low, high] = [-1e-6, 1e-6]
  while (sum(low) > 0) low *= 2
  while (sum(high) < 0) high *= 2
  for (let step = 0; step < 50; step++) {
    const middle = (low + high) / 2
    if (sum(middle) < 0) low = middle
    else high = middle
  }
  const more = (low + high) / 2
  for (const [edge, sign] of loop) flows[edge]! += sign * more
  return more
}

function loopsOf(edges: readonly PlainEdge[]): readonly Loop[] {
  const wayTo = new Map<string, Loop>()
  const tree = new Set<number>()
  for (const { from } of edges) {
    if (wayTo.has(from)) continue
    wayTo.set(from, [])
    for (const node of wayTo.keys()) grow(edges, node, wayTo, tree)
  }
  return [...edges.entries()].flatMap(([index, { from, to }]) => {
    if (tree.has(index)) return []
    const back = wayTo.get(to)!.map(([edge, sign]) => [edge, sign === 1 ? -1 : 1] as const)
    return [cancelled([...wayTo.get(from)!, [index, 1], ...back])]
  })
}

function grow(edges: readonly PlainEdge[], node: string, wayTo: Map<string, Loop>, tree: Set<number>): void {
  for (const [index, { from, to }] of edges.entries()) {
    const [next, sign] = from === node ? ([to, 1] as const) : ([from, -1] as const)
    if ((from !== node && to !== node) || wayTo.has(next)) continue
    wayTo.set(next, [...wayTo.get(node)!, [index, sign]])
    tree.add(index)
  }
}

/** A loop without the stem that it walks up and down. */
function cancelled(loop: Loop): Loop {
  const sums = new Map<number, number>()
  for (const [edge, sign] of loop) sums.set(edge, (sums.get(edge) ?? 0) + sign)
  return [...sums].flatMap(([edge, sum]) => (sum === 0 ? [] : [[edge, sum > 0 ? 1 : -1] as const]))
}
