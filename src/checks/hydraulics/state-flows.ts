import type { Context, Missing } from '../../facts/index.js'
import type { Thing } from '../../model/index.js'
import { type EdgeFlow, type FlowEdge, type NetworkSolution, type Step, solveFlowNetwork } from '../../sizing/index.js'
import { type Asker, openAsker } from './asker.js'
import type { HeatingPassage, HeatingPassages } from './heating-passages.js'
import { movingFluid } from './moving-fluid.js'
import { isScheduleTaken, scheduleTaken } from '../listed-pipe.js'
import { passageParts } from './passage-parts.js'
import { runningPump } from './running-pump.js'

interface NamedState {
  readonly name: string
  readonly state: Thing
  readonly assumed: boolean
}

/** One declared state: its flows, or what is missing or impossible. */
export type StateFlows =
  | (NamedState & {
      readonly solved: true
      /** kg/m3 */
      readonly density: number
      /** J/m3 K */
      readonly heatPerVolume: number
      /** Pa s */
      readonly viscosity: number
      /** What the flows were found in: every passage under its name. */
      readonly edges: readonly FlowEdge[]
      /** m3/s through a component by its main way, or along a line; undefined for what no water passes. */
      readonly flowThrough: (id: string) => number | undefined
      /** m/s, highest in a line. */
      readonly velocityIn: (id: string) => number | undefined
      readonly solution: Extract<NetworkSolution, { readonly solved: true }>
      readonly working: readonly Step[]
      readonly taken: readonly string[]
    })
  | (NamedState & { readonly solved: false; readonly missing: readonly Missing[]; readonly why?: string })

/** Builds the flow network of a state from what is drawn, and solves it. */
export function stateFlows(state: Thing, { passages, openEnds }: HeatingPassages, context: Context): StateFlows {
  const asker = openAsker(context)
  const fluid = movingFluid(context, asker)
  const edges = edgesOf(passages, state, { context, asker })
  const trail = asker.trail()
  const named = { name: state.name ?? state.id, state, assumed: trail.assumed }
  const missing = [...openEnds, ...trail.missing]
  if (fluid === undefined || missing.length > 0) return { ...named, solved: false, missing }
  const solution = solveFlowNetwork({ ...fluid, edges })
  if (!solution.solved) return { ...named, solved: false, missing: [], why: spokenOfThings(solution.why) }
  const uneven = unevenLine(passages, solution)
  if (uneven !== undefined) return { ...named, solved: false, missing: [{ subject: uneven.id, fact: 'path' }] }
  return { ...named, ...fluid, edges, ...answered(passages, solution, schedules(passages, context)) }
}

/** Passages are named by their thing and a count: a person knows the thing. */
function spokenOfThings(why: string): string {
  return why.replace(/^([\w-]+) \d+/, '$1')
}

interface Reading {
  readonly context: Context
  readonly asker: Asker
}

function edgesOf(passages: readonly HeatingPassage[], state: Thing, { context, asker }: Reading): readonly FlowEdge[] {
  const open = asker.list(state, 'open') ?? []
  const running = asker.list(state, 'running') ?? []
  const pieces = new Map<Thing, number>()
  for (const { owner } of passages) pieces.set(owner, (pieces.get(owner) ?? 0) + 1)
  return passages.map((passage): FlowEdge => {
    const { name, from, to, owner } = passage
    const edge = { name, from, to, parts: passageParts(passage, pieces.get(owner) ?? 1, asker) ?? [] }
    if (!passage.main) return edge
    if (isStateValve(owner)) return { ...edge, closed: !open.includes(owner.id) }
    if (owner.kind.name === 'checkValve') return { ...edge, checked: true }
    if (owner.kind.name === 'circulator') return { ...edge, ...pumpEdge(owner, state, running, { context, asker }) }
    return edge
  })
}

/** Valves that a state opens and shuts; those for service stand open. */
function isStateValve({ kind }: Thing): boolean {
  return kind.name === 'zoneValve' || kind.name === 'divertingValve' || kind.name === 'bypassValve'
}

function pumpEdge(
  owner: Thing,
  state: Thing,
  running: readonly string[],
  { context, asker }: Reading,
): Partial<FlowEdge> {
  const checked = asker.word(owner, 'checkBuiltIn') === 'yes'
  if (!running.includes(owner.id)) {
    if (!checked) asker.lacks(owner.id, 'checkBuiltIn')
    return { closed: true }
  }
  const pump = runningPump(owner, state, context, asker)
  return pump === undefined ? { checked } : { pump, checked }
}

/** What is taken of the walls of pipe. */
function schedules(passages: readonly HeatingPassage[], { ask }: Context): readonly string[] {
  const types = passages.flatMap(({ owner }) => (owner.kind.section === 'lines' ? [ask('pipe.type', owner)] : []))
  return types.some((type) => type.state === 'word' && isScheduleTaken(type.word)) ? [scheduleTaken] : []
}

type Solution = Extract<NetworkSolution, { readonly solved: true }>

/** A line whose pieces carry different flows: nobody knows how long each piece is. */
function unevenLine(passages: readonly HeatingPassage[], solution: Solution): Thing | undefined {
  const first = new Map<Thing, number>()
  return passages.find(({ owner, name }) => {
    if (owner.kind.section !== 'lines') return false
    const flow = Math.abs(solution.edge(name)?.flow ?? 0)
    const before = first.get(owner) ?? flow
    first.set(owner, before)
    return Math.abs(flow - before) > 1e-8
  })?.owner
}

function answered(
  passages: readonly HeatingPassage[],
  solution: Solution,
  walls: readonly string[],
): Pick<
  Extract<StateFlows, { readonly solved: true }>,
  'solved' | 'flowThrough' | 'velocityIn' | 'solution' | 'working' | 'taken'
> {
  const byOwner = new Map<string, EdgeFlow>()
  for (const { owner, name, main } of passages) {
    const edge = main || owner.kind.section === 'lines' ? solution.edge(name) : undefined
    if (edge !== undefined) byOwner.set(owner.id, edge)
  }
  const flowThrough = (id: string): number | undefined => {
    const edge = byOwner.get(id)
    return edge === undefined ? undefined : Math.abs(edge.flow)
  }
  return {
    solved: true,
    solution,
    flowThrough,
    velocityIn: (id) => byOwner.get(id)?.velocity,
    working: [...byOwner].map(([id, { flow }]) => ({
      name: `flow through ${id}`,
      value: Math.abs(flow),
      unit: 'm3/s',
    })),
    taken: [
      ...solution.assumed,
      ...walls,
      'the fluid is at its hottest mean',
      'valves for service stand open',
      'fittings and emitters are covered by the equivalent length of their line',
    ],
  }
}
