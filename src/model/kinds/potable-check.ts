import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A valve that lets cold drinking water through in one direction only. */
export const potableCheck = kind('potableCheck', {
  spoken: 'cold water check valve',
  place: 'hotWater',
  ports: { in: 'potableCold', out: 'potableCold' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never', checks: true }],
  fields: {},
})

/** A cold water check valve as written: plain text values. */
export interface PotableCheckWritten extends WrittenOf<typeof potableCheck> {}
