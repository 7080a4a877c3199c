import { backflowDevice, fillDevice } from '../families.js'
import { kind } from '../kind.js'
import type { EntryWritten, WrittenOf } from '../written.js'

/** A backflow preventer and a fill valve in one body (ASSE 1081): it does both at one place. */
export const combinedFillDevice = kind('combinedFillDevice', {
  spoken: 'combined fill device',
  place: 'fill',
  families: [backflowDevice, fillDevice],
  ports: { in: 'potableCold', out: 'heatingWater', vent: 'discharge' },
  ways: [{ between: ['in', 'out'], closes: 'always', checks: true, restricts: true }],
  fields: {
    ...backflowDevice.fields,
    ...fillDevice.fields,
  },
})

/** A combined fill device as written: plain text values. */
export interface CombinedFillDeviceWritten extends WrittenOf<typeof combinedFillDevice> {
  /** Whether the fill joins where an expansion tank does: nothing but fittings and valves lies between the two. */
  readonly joinsAtTank?: EntryWritten<'yes' | 'no'>
}
