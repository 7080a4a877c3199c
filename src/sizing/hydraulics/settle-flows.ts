import { fallOf, steepness, type EdgeLaw } from './edge-law.js'
import { starMesh } from './star-mesh.js'

/** Edges between numbered nodes. */
export interface Circuit {
  readonly nodes: number
  readonly laws: readonly EdgeLaw[]
  readonly fixed: ReadonlyMap<number, number>
}

/** Where the iteration came to. */
export interface Settled {
  /** Per edge, m3/s. */
  readonly flows: readonly number[]
  /** Per node, m. */
  readonly heads: readonly number[]
  readonly iterations: number
  readonly settled: boolean
}

/**
 * Flows and heads by the global gradient method of Todini and Pilati: Newton on all edges at once, one symmetric solution a
 * step. A check valve that holds leaks a hair, so that the nodes behind it keep a head; which ones hold is decided after each
 * round of steps.
 */
export function settleFlows(circuit: Circuit): Settled {
  const start = circuit.laws.map(({ edge }) => (edge.parts.length === 0 ? 0 : firstFlow))
  const first = { holding: new Set<number>(), state: newton(circuit, start, new Set()) }
  const rounds = 20 + 2 * circuit.laws.filter(({ edge }) => edge.checked).length
  return withChecks(circuit, first, rounds)
}

interface Round {
  /** Edges whose check holds. */
  readonly holding: ReadonlySet<number>
  readonly state: Settled
}

function withChecks(circuit: Circuit, first: Round, rounds: number): Settled {
  const now = { ...first }
  for (let round = 0; round < rounds; round++) {
    const turned = wronglyHeld(circuit, now)
    if (turned.length === 0) return now.state
    // All at once is quick; one at a time cannot go in circles.
    const turning = round < 10 ? turned : turned.slice(0, 1)
    now.holding = new Set(
      [...circuit.laws.keys()].filter((index) => now.holding.has(index) !== turning.includes(index)),
    )
    const { iterations, ...state } = newton(circuit, now.state.flows, now.holding)
    now.state = { ...state, iterations: iterations + now.state.iterations }
  }
  return { ...now.state, settled: false }
}

/** Checks that let something back, and checks that hold though the head would open them. */
function wronglyHeld({ laws }: Circuit, { holding, state }: Round): readonly number[] {
  return [...laws.entries()].flatMap(([index, law]) => {
    if (law.edge.checked !== true) return []
    if (!holding.has(index)) return (state.flows[index] ?? 0) < -negligible ? [index] : []
    const push = (state.heads[law.from] ?? 0) - (state.heads[law.to] ?? 0) + (law.pump?.headAt(0) ?? 0)
    return push > negligibleHead ? [index] : []
  })
}

function newton(circuit: Circuit, start: readonly number[], holding: ReadonlySet<number>): Settled {
  let flows = start
  for (let iterations = 1; iterations <= most; iterations++) {
    const { next, heads } = step(circuit, flows, holding)
    const moved = next.reduce((sum, flow, index) => sum + Math.abs(flow - (flows[index] ?? 0)), 0)
    const size = next.reduce((sum, flow) => sum + Math.abs(flow), 0)
    if (moved <= 1e-11 * size + 1e-12 * next.length) return { flows: next, heads, iterations, settled: true }
    // Where the kinks of a pump's control throw the step to and fro, half a step ends it.
    flows = iterations < patience ? next : next.map((flow, index) => (flow + (flows[index] ?? 0)) / 2)
  }
  return { flows, heads: [], iterations: most, settled: false }
}

interface Stepped {
  readonly next: readonly number[]
  readonly heads: readonly number[]
}

function step({ nodes, laws, fixed }: Circuit, flows: readonly number[], holding: ReadonlySet<number>): Stepped {
  const inflow = Array.from({ length: nodes }, () => 0)
  const tangents = laws.map((law, index) => {
    if (holding.has(index)) return { conductance: leak, base: 0 }
    const flow = flows[index] ?? 0
    const conductance = 1 / steepness(law, flow)
    return { conductance, base: flow - conductance * fallOf(law, flow) }
  })
  for (const [index, { base }] of tangents.entries()) shift(inflow, laws[index], base)
  const links = laws.map(({ from, to }, index) => [from, to, tangents[index]?.conductance ?? leak] as const)
  const heads = starMesh({ nodes, links, inflow, fixed })
  const next = laws.map(({ from, to }, index) => {
    const { conductance = leak, base = 0 } = tangents[index] ?? {}
    return base + conductance * ((heads[from] ?? 0) - (heads[to] ?? 0))
  })
  return { next, heads }
}

function shift(inflow: number[], law: EdgeLaw | undefined, base: number): void {
  if (law === undefined) return
  inflow[law.from] = (inflow[law.from] ?? 0) - base
  inflow[law.to] = (inflow[law.to] ?? 0) + base
}

/** m3/s; a gallon a minute. */
const firstFlow = 6e-5
/** m3/s per m */
const leak = 1e-12
/** m3/s */
const negligible = 1e-11
/** m */
const negligibleHead = 1e-9
const patience = 60
const most = 200
