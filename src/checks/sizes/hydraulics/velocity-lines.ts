import type { Context } from '../../../facts/index.js'
import { line } from '../../../model/index.js'
import type { SolvedState } from '../../hydraulics/index.js'
import type { SizeLine } from '../size-line.js'

/** Highest velocity of the state, in the line where it runs. */
export function velocityLines(context: Context, flows: SolvedState): readonly SizeLine[] {
  const [fastest] = context
    .listed(line)
    .things.map(({ id }) => ({ id, speed: flows.velocityIn(id) ?? 0 }))
    .toSorted((one, other) => other.speed - one.speed)
  if (fastest === undefined || fastest.speed === 0) return []
  return [
    {
      name: `highest velocity while ${flows.name}`,
      of: fastest.id,
      state: 'sized',
      quantity: 'velocity',
      value: fastest.speed,
      working: [{ name: `velocity in ${fastest.id}`, value: fastest.speed, unit: 'm/s' }],
      assumed: flows.taken,
      valid: true,
    },
  ]
}
