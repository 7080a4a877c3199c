import { yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A water seal that keeps flue gas out of the condensate drain. */
export const condensateTrap = kind('condensateTrap', {
  spoken: 'condensate trap',
  place: 'condensate',
  ports: { in: 'condensate', out: 'condensate' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never' }],
  fields: {
    /** Whether it was filled with water before the first firing. */
    filled: yesNo,
    /** Whether it stands where it cannot freeze. */
    indoors: yesNo,
  },
})

/** A condensate trap as written: plain text values. */
export interface CondensateTrapWritten extends WrittenOf<typeof condensateTrap> {}
