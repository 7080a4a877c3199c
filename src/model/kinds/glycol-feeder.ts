import { fillDevice } from '../families.js'
import { quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { EntryWritten, WrittenOf } from '../written.js'

/** A tank with a small pump that refills a system with ready mixed glycol and is not joined to the water service. */
export const glycolFeeder = kind('glycolFeeder', {
  spoken: 'glycol feeder',
  place: 'fill',
  families: [fillDevice],
  ports: { out: 'heatingWater' },
  fields: {
    ...fillDevice.fields,
    /** What its tank holds; gallons, above zero. */
    volume: quantity('volume'),
    /** Whether it gives an alarm when its tank runs low. */
    lowLevelAlarm: yesNo,
  },
})

/** A glycol feeder as written: plain text values. */
export interface GlycolFeederWritten extends WrittenOf<typeof glycolFeeder> {
  /** Whether the fill joins where an expansion tank does: nothing but fittings and valves lies between the two. */
  readonly joinsAtTank?: EntryWritten<'yes' | 'no'>
}
