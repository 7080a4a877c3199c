import { firstImpossible } from '../first-impossible.js'
import { fluidExpected } from '../friction/flow-in-pipe.js'
import { impossibleRun } from '../friction/run-loss.js'
import { edgeLaw, type EdgeLaw, highestVelocity } from './edge-law.js'
import { everyEdge, type EveryEdge } from './every-edge.js'
import type { EdgeFlow, FlowEdge, FlowNetwork, NetworkSolution, PumpDuty } from './flow-network.js'
import { connectedParts, wayRound } from './flow-ways.js'
import { readyPump } from './pump.js'
import { seriesOf } from './series.js'
import { settleFlows } from './settle-flows.js'

/**
 * Steady flows and heads of any network of pipes, valves and pumps.
 *
 * Nodal Newton, the global gradient method of Todini and Pilati 1988, with the steps bounded: the cost of a state grows in
 * proportion to the number of parallel branches.
 *
 * @returns flows in m3/s, heads in m of the fluid; or a sentence that names the impossible edge, pump or number
 *
 * @example
 * const solution = solveFlowNetwork({
 *   density: 983.2, viscosity: 0.000466,
 *   edges: [
 *     { name: 'C1', from: 'return', to: 'supply', parts: [],
 *       pump: { curve: [{ flow: 0, head: 4 }, { flow: 0.001, head: 0 }], control: { mode: 'constant-speed' } } },
 *     { name: 'Z1', from: 'supply', to: 'return', parts: [{ name: 'ZV1', part: 'valve', kv: 2 }] },
 *   ],
 * })
 * // solution.edge('Z1').flow 0.000314
 */
export function solveFlowNetwork(network: FlowNetwork): NetworkSolution {
  const open = network.edges.filter((edge) => edge.closed !== true)
  const why = impossibleNetwork(network, open)
  if (why !== undefined) return { solved: false, why }
  const nodes = new Map([...new Set(network.edges.flatMap(({ from, to }) => [from, to]))].map((name, at) => [name, at]))
  const laws = lawsOf(open, nodes, network)
  if (typeof laws === 'string') return { solved: false, why: laws }
  const fixed = fixedHeads(network, nodes, open)
  const ways = seriesOf(laws, fixed, network)
  const settled = settleFlows({ nodes: nodes.size, ways, fixed })
  if (!settled.settled) return { solved: false, why: unsettled(open) }
  return written({ network, nodes, laws, fixed }, { ...everyEdge(settled, ways, laws), iterations: settled.iterations })
}

interface Prepared {
  readonly network: FlowNetwork
  readonly nodes: ReadonlyMap<string, number>
  readonly laws: readonly EdgeLaw[]
  readonly fixed: ReadonlyMap<number, number>
}

function impossibleNetwork({ fixed = [], ...network }: FlowNetwork, open: readonly FlowEdge[]): string | undefined {
  const names = new Set<string>()
  for (const { name } of network.edges) {
    if (names.has(name)) return `Two edges are called ${name}.`
    names.add(name)
  }
  const numbers = firstImpossible(
    ...fluidExpected(network),
    ...fixed.map(({ node, head }) => [`head at ${node}`, head, 'any'] as const),
  )
  if (numbers !== undefined) return numbers
  const places = new Set(network.edges.flatMap(({ from, to }) => [from, to]))
  const nowhere = fixed.find(({ node }) => !places.has(node))
  if (nowhere !== undefined) return `No edge leads to ${nowhere.node}, whose head is given.`
  return open.map((edge) => impossibleEdge(edge, network)).find((why) => why !== undefined) ?? wayRound(open, fixed)
}

function impossibleEdge({ name, from, to, parts }: FlowEdge, network: FlowNetwork): string | undefined {
  if (from === to) return `${name} begins and ends at ${from}.`
  const why = parts.length === 0 ? undefined : impossibleRun({ ...network, parts })
  return why === undefined ? undefined : `${name}: ${why}`
}

function lawsOf(
  edges: readonly FlowEdge[],
  nodes: ReadonlyMap<string, number>,
  network: FlowNetwork,
): readonly EdgeLaw[] | string {
  const laws: EdgeLaw[] = []
  for (const edge of edges) {
    const pump = edge.pump === undefined ? undefined : readyPump(edge.pump)
    if (typeof pump === 'string') return `${edge.name}: ${pump}`
    laws.push(edgeLaw(edge, { from: nodes.get(edge.from) ?? 0, to: nodes.get(edge.to) ?? 0, pump }, network))
  }
  return laws
}

/** The given heads; zero at the first node of each part of the network that has none. */
function fixedHeads(
  { fixed = [], edges }: FlowNetwork,
  nodes: ReadonlyMap<string, number>,
  open: readonly FlowEdge[],
): ReadonlyMap<number, number> {
  const given = new Map(fixed.map(({ node, head }) => [node, head]))
  const parts = connectedParts(
    edges.flatMap(({ from, to }) => [from, to]),
    open,
  )
  const floating = parts.filter((part) => !part.some((node) => given.has(node)))
  const all = [...given, ...floating.flatMap((part) => (part[0] === undefined ? [] : [[part[0], 0] as const]))]
  return new Map(all.map(([node, head]) => [nodes.get(node) ?? 0, head]))
}

function unsettled(open: readonly FlowEdge[]): string {
  const pumps = open.filter(({ pump }) => pump !== undefined).map(({ name }) => name)
  return `No flow was found at which the heads of ${pumps.join(', ') || 'the nodes'} meet the losses.`
}

function written(prepared: Prepared, settled: EveryEdge & { readonly iterations: number }): NetworkSolution {
  const { network, nodes, laws } = prepared
  const { flows, losses } = settled
  const byName = new Map(laws.map((law, index) => [law.edge.name, flowOf(law, flows[index] ?? 0, losses[index] ?? 0)]))
  const edges = network.edges.map((edge) => byName.get(edge.name) ?? shut(edge))
  const pumps = laws.flatMap((law, index) => dutyOf(law, flows[index] ?? 0))
  return {
    solved: true,
    edges,
    edge: (name) => byName.get(name) ?? edges.find((edge) => edge.name === name),
    heads: new Map([...nodes].map(([name, at]) => [name, settled.heads[at] ?? 0])),
    pumps,
    ...residuals(prepared, settled),
    iterations: settled.iterations,
    working: [
      ...edges.map(({ name, flow }) => ({ name: `flow through ${name}`, value: flow, unit: 'm3/s' })),
      ...pumps.map(({ name, head }) => ({ name: `head of ${name}`, value: head, unit: 'm', readAs: 'head' })),
    ],
    assumed: [
      network.method === 'churchill'
        ? 'friction by Churchill 1977'
        : 'friction by 64/Re, Colebrook and White, and a straight line from Re 2,000 to 4,000',
      'one temperature everywhere',
    ],
    valid: laws.every(({ pump }, index) => pump === undefined || (flows[index] ?? 0) <= pump.lastFlow),
  }
}

function flowOf(law: EdgeLaw, flow: number, loss: number): EdgeFlow {
  const { name, from, to } = law.edge
  return { name, from, to, flow, loss, velocity: highestVelocity(law, flow) }
}

function shut({ name, from, to }: FlowEdge): EdgeFlow {
  return { name, from, to, flow: 0, loss: 0, velocity: 0 }
}

function dutyOf({ edge: { name }, pump }: EdgeLaw, flow: number): readonly PumpDuty[] {
  return pump === undefined ? [] : [{ name, flow, head: pump.headAt(flow), fullSpeedHead: pump.fullSpeedAt(flow) }]
}

interface Residuals {
  readonly unbalancedFlow: number
  readonly unbalancedHead: number
}

function residuals({ laws, fixed, nodes }: Prepared, { flows, falls, heads }: EveryEdge): Residuals {
  const sums = Array.from({ length: nodes.size }, () => 0)
  const misses = laws.map((law, index) => {
    const flow = flows[index] ?? 0
    sums[law.from] = (sums[law.from] ?? 0) - flow
    sums[law.to] = (sums[law.to] ?? 0) + flow
    const held = law.edge.checked === true && flow === 0
    return held ? 0 : Math.abs((heads[law.from] ?? 0) - (heads[law.to] ?? 0) - (falls[index] ?? 0))
  })
  const free = sums.filter((_, node) => !fixed.has(node)).map(Math.abs)
  return { unbalancedFlow: greatest(free), unbalancedHead: greatest(misses) }
}

function greatest(numbers: readonly number[]): number {
  return numbers.reduce((most, one) => Math.max(most, one), 0)
}
