import type { Series } from './series.js'
import { starMesh } from './star-mesh.js'

/** Ways between numbered nodes. */
export interface Circuit {
  readonly nodes: number
  readonly ways: readonly Series[]
  readonly fixed: ReadonlyMap<number, number>
}

/** Where the iteration came to. */
export interface Settled {
  /** Per way, m3/s. */
  readonly flows: readonly number[]
  /** Per node, m; zero at nodes that no way ends at. */
  readonly heads: readonly number[]
  readonly iterations: number
  readonly settled: boolean
}

/**
 * Flows and heads by the global gradient method of Todini and Pilati: Newton on all ways at once, one symmetric solution a
 * step. A check valve that holds leaks a hair, so that the nodes behind it keep a head; which ones hold is decided after each
 * round of steps.
 */
export function settleFlows(drawn: Circuit): Settled {
  const { circuit, numbers } = renumbered(drawn)
  const start = circuit.ways.map(({ firstFlow }) => firstFlow)
  const first = { holding: new Set<number>(), state: newton(circuit, start, new Set()) }
  const rounds = 20 + 2 * circuit.ways.filter(({ checked }) => checked).length
  const settled = withChecks(circuit, first, rounds)
  return { ...settled, heads: Array.from({ length: drawn.nodes }, (_, node) => headAt(node, settled, numbers)) }
}

/** Only the nodes at which a way ends: the others take no part. */
function renumbered({ ways, fixed }: Circuit): { readonly circuit: Circuit; readonly numbers: Numbers } {
  const numbers = new Map([...new Set(ways.flatMap(({ from, to }) => [from, to]))].map((node, at) => [node, at]))
  const numberOf = (node: number): number => numbers.get(node) ?? 0
  const circuit = {
    nodes: numbers.size,
    ways: ways.map((way) => ({ ...way, from: numberOf(way.from), to: numberOf(way.to) })),
    fixed: new Map([...fixed].flatMap(([node, head]) => (numbers.has(node) ? [[numberOf(node), head] as const] : []))),
  }
  return { circuit, numbers: { fixed, numbers } }
}

interface Numbers {
  readonly fixed: ReadonlyMap<number, number>
  readonly numbers: ReadonlyMap<number, number>
}

function headAt(node: number, { heads }: Settled, { fixed, numbers }: Numbers): number {
  const at = numbers.get(node)
  return (at === undefined ? fixed.get(node) : heads[at]) ?? 0
}

interface Round {
  /** Ways whose check holds. */
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
      [...circuit.ways.keys()].filter((index) => now.holding.has(index) !== turning.includes(index)),
    )
    const { iterations, ...state } = newton(circuit, now.state.flows, now.holding)
    now.state = { ...state, iterations: iterations + now.state.iterations }
  }
  return { ...now.state, settled: false }
}

/** Checks that let something back, and checks that hold though the head would open them. */
function wronglyHeld({ ways }: Circuit, { holding, state }: Round): readonly number[] {
  return [...ways.entries()].flatMap(([index, { checked, from, to, tangentAt }]) => {
    if (!checked) return []
    if (!holding.has(index)) return (state.flows[index] ?? 0) < -negligible ? [index] : []
    const push = (state.heads[from] ?? 0) - (state.heads[to] ?? 0) - tangentAt(0).fall
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

function step({ nodes, ways, fixed }: Circuit, flows: readonly number[], holding: ReadonlySet<number>): Stepped {
  const lines = ways.map(({ tangentAt }, index) => {
    if (holding.has(index)) return { conductance: leak, base: 0 }
    const flow = flows[index] ?? 0
    const { fall, steepness } = tangentAt(flow)
    return { conductance: 1 / steepness, base: flow - fall / steepness }
  })
  const inflow = Array.from({ length: nodes }, () => 0)
  const links = ways.map(({ from, to }, index) => {
    const { conductance, base } = lines[index] ?? held
    inflow[from] = (inflow[from] ?? 0) - base
    inflow[to] = (inflow[to] ?? 0) + base
    return [from, to, conductance] as const
  })
  const heads = starMesh({ nodes, links, inflow, fixed })
  const next = ways.map(({ from, to }, index) => {
    const { conductance, base } = lines[index] ?? held
    return base + conductance * ((heads[from] ?? 0) - (heads[to] ?? 0))
  })
  return { next, heads }
}

/** m3/s per m */
const leak = 1e-12
const held = { conductance: leak, base: 0 }
/** m3/s */
const negligible = 1e-11
/** m */
const negligibleHead = 1e-9
const patience = 60
const most = 200
