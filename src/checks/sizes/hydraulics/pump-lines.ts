import type { Context } from '../../../facts/index.js'
import { circulator } from '../../../model/index.js'
import { hydraulicPower, type Step } from '../../../sizing/index.js'
import { passageOwner, type SolvedState } from '../../hydraulics/index.js'
import { sizeLine, type SizeLine } from '../size-line.js'

/** Operating point of each circulator that runs in the state, and the power that it gives to the fluid. */
export function pumpLines(context: Context, flows: SolvedState): readonly SizeLine[] {
  return context.listed(circulator).things.flatMap(({ id }) => dutyLines(flows, id))
}

function dutyLines(flows: SolvedState, id: string): readonly SizeLine[] {
  const duty = flows.solution.pumps.find((pump) => passageOwner(pump) === id)
  if (duty === undefined || duty.flow <= 0) return []
  const { flow, head, fullSpeedHead } = duty
  const point: readonly Step[] = [
    { name: 'flow', value: flow, unit: 'm3/s' },
    { name: 'head that its curve alone would give', value: fullSpeedHead, unit: 'm', readAs: 'head' },
    { name: 'head', value: head, unit: 'm', readAs: 'head' },
  ]
  return [
    {
      name: `pump head while ${flows.name}`,
      of: id,
      state: 'sized',
      quantity: 'head',
      value: head,
      working: point,
      assumed: flows.taken,
      valid: flows.solution.valid,
    },
    sizeLine({ name: `power to the water while ${flows.name}`, of: id, readAs: 'power' }, 'heatRate', () =>
      hydraulicPower({ flow, head, density: flows.density }),
    ),
  ]
}
