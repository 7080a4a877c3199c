import type { Context } from '../../../facts/index.js'
import { boiler, circulator, zone } from '../../../model/index.js'
import type { SolvedState } from '../../hydraulics/index.js'
import type { SizeLine } from '../size-line.js'

/** Flow through each boiler, circulator and zone valve that water passes in the state. */
export function flowLines(context: Context, flows: SolvedState): readonly SizeLine[] {
  const watched = [boiler, circulator].flatMap((kind) => context.listed(kind).things.map(({ id }) => id))
  const valves = context.listed(zone).things.flatMap((one) => {
    const valve = context.ask('valve', one)
    return valve.state === 'word' ? [valve.word] : []
  })
  return [...watched, ...new Set(valves)].flatMap((id) => flowLine(flows, id))
}

function flowLine(flows: SolvedState, id: string): readonly SizeLine[] {
  const flow = flows.flowThrough(id)
  if (flow === undefined || flow === 0) return []
  return [
    {
      name: `flow while ${flows.name}`,
      of: id,
      state: 'sized',
      quantity: 'volumeFlow',
      value: flow,
      working: [{ name: `flow through ${id}`, value: flow, unit: 'm3/s' }],
      assumed: flows.taken,
      valid: true,
    },
  ]
}
