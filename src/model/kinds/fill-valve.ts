import { fillDevice } from '../families.js'
import { kind } from '../kind.js'
import type { EntryWritten, WrittenOf } from '../written.js'

/** A pressure-reducing valve that fills the heating system. It suits either water: where it stands ahead of the backflow preventer it holds drinking water. */
export const fillValve = kind('fillValve', {
  spoken: 'fill valve',
  place: 'fill',
  families: [fillDevice],
  ports: { in: 'eitherWater', out: 'eitherWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'always', checks: true, restricts: true }],
  fields: { ...fillDevice.fields },
})

/** A fill valve as written: plain text values. */
export interface FillValveWritten extends WrittenOf<typeof fillValve> {
  /** Where the backflow device stands on the ways from drinking water to the fill valve: `ahead` of it, `behind` it, or `missing`. */
  readonly backflowOrder?: EntryWritten<'ahead' | 'behind' | 'missing'>
  /** Whether the fill joins where an expansion tank does: nothing but fittings and valves lies between the two. */
  readonly joinsAtTank?: EntryWritten<'yes' | 'no'>
}
