import type { Context } from '../../../facts/index.js'
import { boiler, zone, type Thing } from '../../../model/index.js'
import { fluidDensity, solveFlowNetwork, type FlowEdge, type Pump, type Sizing } from '../../../sizing/index.js'
import { circulating, hydraulicsOf, passageOwner, type SolvedState } from '../../hydraulics/index.js'
import { sizeLine, type SizeLine, type Taking } from '../size-line.js'
import { systemFluid } from '../system-fluid.js'

/**
 * Flow that warm water alone drives through each zone while no pump runs and its valve stands open: none where a flow check in
 * the way holds it back.
 */
export function ghostLines(context: Context): readonly SizeLine[] {
  const flows = hydraulicsOf(context).states.find((state): state is SolvedState => state.solved)
  if (flows === undefined) return []
  const rest = atRest(context, flows)
  return context.listed(zone).things.flatMap((one) => ghostLine(context, rest, one))
}

function ghostLine(context: Context, rest: Rest, one: Thing): readonly SizeLine[] {
  const valve = context.ask('valve', one)
  if (valve.state !== 'word') return []
  return [
    sizeLine({ name: 'ghost flow with its valve open and no pump running', of: one.id }, 'volumeFlow', (take) => {
      const emitters = context.ask('emitters', one)
      if (emitters.state === 'list' && emitters.complete && emitters.members.length === 0)
        return { sized: false, why: `The zone ${one.id} has no emitter that could cool its water.` }
      const push = pushOf(context, rest.flows, one, take)
      const edges = still(rest, { valve: valve.word, push })
      return throughValve(rest.flows, edges, valve.word)
    }),
  ]
}

/** m of the fluid by which the cool leg outweighs the warm riser. */
function pushOf(context: Context, { density }: SolvedState, one: Thing, take: Taking): number {
  const fluid = systemFluid(context, take)
  const supply = take.number(context.ask('designSupply', one))
  const difference = take.number(context.ask('designDifference', one))
  const heights = take.list(context.ask('emitters', one)).flatMap((id) => {
    const thing = context.find(id)
    return thing === undefined ? [] : [take.number(context.ask('topElevation', thing))]
  })
  const warm = fluidDensity({ fluid, temperature: supply })
  const cool = fluidDensity({ fluid, temperature: supply - difference })
  if (!warm.sized || !cool.sized) return NaN
  return (Math.max(0, cool.value - warm.value) * Math.max(0, ...heights)) / density
}

interface Ghost {
  readonly valve: string
  readonly push: number
}

/** The drawn water with every pump at rest. */
interface Rest {
  readonly flows: SolvedState
  readonly boilers: ReadonlySet<string>
  readonly valves: ReadonlySet<string>
  /** What could run round were every zone valve open; no flow check lies in it. */
  readonly round: readonly FlowEdge[]
}

function atRest(context: Context, flows: SolvedState): Rest {
  const boilers = new Set(context.listed(boiler).things.map(({ id }) => id))
  const valves = new Set(
    context.listed(zone).things.flatMap((one) => {
      const valve = context.ask('valve', one)
      return valve.state === 'word' ? [valve.word] : []
    }),
  )
  const open = flows.edges.filter(
    (edge) => edge.checked !== true && (edge.closed !== true || valves.has(passageOwner(edge))),
  )
  const round = circulating(open)
  return { flows, boilers, valves, round: round.some((edge) => boilers.has(passageOwner(edge))) ? round : [] }
}

/** The water that can run round with the other zones shut, and the push in the boilers. */
function still({ boilers, valves, round }: Rest, { valve, push }: Ghost): readonly FlowEdge[] {
  const open = round.filter((edge) => passageOwner(edge) === valve || !valves.has(passageOwner(edge)))
  return circulating(open).map(({ name, from, to, parts }): FlowEdge => {
    const edge = { name, from, to, parts }
    return boilers.has(passageOwner(edge)) && push > 0 ? { ...edge, pump: steady(push) } : edge
  })
}

/** A head that stays the same at any flow that gravity can drive. */
function steady(push: number): Pump {
  const curve = [
    { flow: 0, head: 2 * push },
    { flow: 1, head: push },
  ]
  return { curve, control: { mode: 'constant-pressure', setHead: push } }
}

function throughValve({ density, viscosity }: SolvedState, edges: readonly FlowEdge[], valve: string): Sizing {
  const inValve = edges.filter((edge) => passageOwner(edge) === valve)
  if (inValve.length === 0) return heldBack
  const solution = solveFlowNetwork({ density, viscosity, edges })
  if (!solution.solved) return { sized: false, why: solution.why }
  const flow = inValve.map(({ name }) => Math.abs(solution.edge(name)?.flow ?? 0))
  const value = Math.max(0, ...flow)
  return {
    sized: true,
    value,
    working: [{ name: 'flow by gravity', value, unit: 'm3/s' }],
    assumed: [
      ...solution.assumed,
      'supply and return as designed, the boiler at the height of the gauge and the emitters at their tops',
      'a flow check holds what gravity drives',
    ],
    valid: true,
  }
}

const heldBack: Sizing = {
  sized: true,
  value: 0,
  working: [{ name: 'flow by gravity, no open way round', value: 0, unit: 'm3/s' }],
  assumed: ['a flow check holds what gravity drives'],
  valid: true,
}
