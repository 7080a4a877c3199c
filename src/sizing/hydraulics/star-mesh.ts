/** Conductances between nodes, and what flows into each node from outside. */
export interface LinearNetwork {
  readonly nodes: number
  /** `[from, to, conductance above zero]` */
  readonly links: readonly (readonly [number, number, number])[]
  /** Per node. */
  readonly inflow: readonly number[]
  /** Node to its potential; every connected part has at least one. */
  readonly fixed: ReadonlyMap<number, number>
}

/**
 * Potentials of a linear network, by taking one node out after the other, always the one with the fewest neighbors, and
 * joining its neighbors in its place.
 *
 * This is symmetric elimination by minimum degree. Nothing is ever subtracted, so that a hair-thin leak beside a wide pipe
 * keeps all its digits; side by side branches cost a step each.
 */
export function starMesh({ nodes, links, inflow, fixed }: LinearNetwork): readonly number[] {
  const neighbors = Array.from({ length: nodes }, () => new Map<number, number>())
  for (const [from, to, conductance] of links) join(neighbors, [from, to], conductance)
  const current = [...inflow]
  const order = takeOut(neighbors, current, fixed)
  const potential = Array.from({ length: nodes }, (_, node) => fixed.get(node) ?? 0)
  for (const { node, around, total } of order.toReversed()) {
    const driven = around.reduce((sum, [other, conductance]) => sum + conductance * (potential[other] ?? 0), 0)
    potential[node] = total === 0 ? 0 : (driven + (current[node] ?? 0)) / total
  }
  return potential
}

interface TakenOut {
  readonly node: number
  readonly around: readonly (readonly [number, number])[]
  /** Sum of the conductances around it. */
  readonly total: number
}

function takeOut(
  neighbors: readonly Map<number, number>[],
  current: number[],
  fixed: ReadonlyMap<number, number>,
): readonly TakenOut[] {
  const order: TakenOut[] = []
  const waiting = queueOf(neighbors, fixed)
  for (let node = waiting.next(); node !== undefined; node = waiting.next()) {
    const around = [...(neighbors[node] ?? [])]
    const total = around.reduce((sum, [, conductance]) => sum + conductance, 0)
    order.push({ node, around, total })
    replace(neighbors, current, { node, around, total })
    for (const [other] of around) waiting.changed(other)
  }
  return order
}

/** Joins the neighbors of a node in its place, and shares out what flows into it. */
function replace(
  neighbors: readonly Map<number, number>[],
  current: number[],
  { node, around, total }: TakenOut,
): void {
  for (const [index, [one, conductance]] of around.entries()) {
    neighbors[one]?.delete(node)
    current[one] = (current[one] ?? 0) + ((current[node] ?? 0) * conductance) / total
    for (const [other, second] of around.slice(index + 1)) join(neighbors, [one, other], (conductance * second) / total)
  }
}

function join(neighbors: readonly Map<number, number>[], [one, other]: readonly [number, number], more: number): void {
  const [ofOne, ofOther] = [neighbors[one], neighbors[other]]
  if (one === other || ofOne === undefined || ofOther === undefined) return
  const conductance = (ofOne.get(other) ?? 0) + more
  ofOne.set(other, conductance)
  ofOther.set(one, conductance)
}

interface Queue {
  /** The node with the fewest neighbors that was not given yet. */
  readonly next: () => number | undefined
  readonly changed: (node: number) => void
}

/** Nodes by their number of neighbors; an entry that is no longer true is passed over. */
function queueOf(neighbors: readonly Map<number, number>[], fixed: ReadonlyMap<number, number>): Queue {
  const buckets: number[][] = []
  const gone = new Set(fixed.keys())
  const state = { lowest: 0 }
  const degreeOf = (node: number): number => neighbors[node]?.size ?? 0
  const changed = (node: number): void => {
    const degree = degreeOf(node)
    const bucket = buckets[degree] ?? []
    buckets[degree] = bucket
    bucket.push(node)
    state.lowest = Math.min(state.lowest, degree)
  }
  for (const node of neighbors.keys()) changed(node)
  const next = (): number | undefined => {
    while (state.lowest < buckets.length) {
      const node = buckets[state.lowest]?.pop()
      if (node === undefined) state.lowest++
      else if (!gone.has(node) && degreeOf(node) === state.lowest) {
        gone.add(node)
        return node
      }
    }
    return undefined
  }
  return { next, changed }
}
