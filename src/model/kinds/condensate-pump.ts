import { choice, quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A pump with a small sump that lifts condensate to a drain; its outlet has a check valve. */
export const condensatePump = kind('condensatePump', {
  spoken: 'condensate pump',
  place: 'condensate',
  ports: { in: 'condensate', out: 'condensate' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never', checks: true }],
  fields: {
    /** What its overflow switch stops when the pump fails. */
    overflowStops: choice({
      burner: 'the burner',
      'alarm-only': 'nothing, it only sounds an alarm',
      'not-wired': 'nothing, it is not wired',
    }),
    /** Height to which it pumps; feet, commonly 5 to 20. */
    lift: quantity('head'),
    /** What it pumps to that height; gallons per hour, above zero. */
    capacity: quantity('volumeFlow'),
    /** Whether its maker lists it for acid condensate. */
    takesCondensate: yesNo,
  },
})

/** A condensate pump as written: plain text values. */
export interface CondensatePumpWritten extends WrittenOf<typeof condensatePump> {}
