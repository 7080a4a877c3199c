import { choice } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A valve that lets cold drinking water through in one direction only. */
export const potableCheck = kind('potableCheck', {
  spoken: 'cold water check valve',
  place: 'hotWater',
  ports: { in: 'potableCold', out: 'potableCold' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never', checks: true }],
  fields: {
    /** Where it stands. */
    position: choice({
      meter: 'at the meter',
      tank: 'at the tank',
      'mixing-valve': 'at a mixing valve',
      other: 'elsewhere',
    }),
  },
})

/** A cold water check valve as written: plain text values. */
export interface PotableCheckWritten extends WrittenOf<typeof potableCheck> {}
