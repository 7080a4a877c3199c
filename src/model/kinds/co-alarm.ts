import { choice, reference, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A carbon monoxide alarm. */
export const coAlarm = kind('coAlarm', {
  spoken: 'carbon monoxide alarm',
  place: 'alarms',
  fields: {
    /** The space in which it hangs. */
    space: reference('space', { countedAs: 'coAlarms' }),
    /** Whether it sounds together with the other alarms of the dwelling. */
    interconnected: yesNo,
    /** Whether it is listed as a carbon monoxide alarm. */
    listed: yesNo,
    /** What powers it. */
    source: choice({ wired: 'house wiring', battery: 'battery', plug: 'plug' }),
  },
})

/** A carbon monoxide alarm as written: plain text values. */
export interface CoAlarmWritten extends WrittenOf<typeof coAlarm> {}
