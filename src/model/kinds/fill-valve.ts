import { fillDevice } from '../families.js'
import { kind } from '../kind.js'
import type { EntryWritten, WrittenOf } from '../written.js'

/** A pressure-reducing valve that fills the heating system. */
export const fillValve = kind('fillValve', {
  spoken: 'fill valve',
  place: 'fill',
  families: [fillDevice],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'always', checks: true, restricts: true }],
  fields: { ...fillDevice.fields },
})

/** A fill valve as written: plain text values. */
export interface FillValveWritten extends WrittenOf<typeof fillValve> {
  /** Whether the fill joins where an expansion tank does: nothing but fittings and valves lies between the two. */
  readonly joinsAtTank?: EntryWritten<'yes' | 'no'>
}
