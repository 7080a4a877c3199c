import type { Context } from '../../facts/index.js'
import { boiler, circulator, zone } from '../../model/index.js'
import { hydraulicsOf, type StateFlows } from '../hydraulics/index.js'
import type { SizeLine } from './size-line.js'

/** Flows of every declared state, through boilers, pumps and zones, from what is drawn. */
export function hydraulicSizes(context: Context): readonly SizeLine[] {
  const { states, more } = hydraulicsOf(context)
  const lines = states.flatMap((state) => linesOf(context, state))
  return more ? [...lines, { name: 'flows of all states', state: 'open', missing: [countOfStates] }] : lines
}

type SolvedFlows = Extract<StateFlows, { readonly solved: true }>

const countOfStates = { subject: 'state', fact: 'count' } as const

function linesOf(context: Context, flows: StateFlows): readonly SizeLine[] {
  const name = `flows while ${flows.name}`
  if (!flows.solved) {
    const { missing, why } = flows
    return [why === undefined ? { name, state: 'open', missing } : { name, state: 'impossible', why }]
  }
  const watched = [boiler, circulator].flatMap((kind) => context.listed(kind).things.map(({ id }) => id))
  const valves = context.listed(zone).things.flatMap((one) => {
    const valve = context.ask('valve', one)
    return valve.state === 'word' ? [valve.word] : []
  })
  const pumps = context.listed(circulator).things.map(({ id }) => id)
  return [
    ...[...watched, ...new Set(valves)].flatMap((id) => flowLine(flows, id)),
    ...pumps.flatMap((id) => headLine(flows, id)),
  ]
}

function headLine(flows: SolvedFlows, id: string): readonly SizeLine[] {
  const duty = flows.solution.pumps.find(({ name }) => name === id || name.startsWith(`${id}.`))
  if (duty === undefined || duty.flow <= 0) return []
  const head = { name: `head while ${flows.name}`, of: id, state: 'sized', quantity: 'head' } as const
  const working = [
    { name: 'flow', value: duty.flow, unit: 'm3/s' },
    { name: 'head that its curve alone would give', value: duty.fullSpeedHead, unit: 'm' },
    { name: 'head', value: duty.head, unit: 'm' },
  ]
  return [{ ...head, value: duty.head, working, assumed: [], valid: flows.solution.valid }]
}

function flowLine(flows: SolvedFlows, id: string): readonly SizeLine[] {
  const flow = flows.flowThrough(id)
  if (flow === undefined || flow === 0) return []
  return [
    {
      name: `flow while ${flows.name}`,
      of: id,
      state: 'sized',
      quantity: 'volumeFlow',
      value: flow,
      working: flows.working.filter(({ name }) => name === `flow through ${id}`),
      assumed: flows.taken,
      valid: true,
    },
  ]
}
