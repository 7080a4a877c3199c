import { quantity } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A pipe or manifold for drinking water that one main and several branches join; branches are `branch1`, `branch2` and so on. */
export const potableHeader = kind('potableHeader', {
  spoken: 'potable header',
  place: 'hotWater',
  ports: { main: 'potableCold', 'branch*': 'potableCold' },
  ways: [{ between: ['main', 'branch*'], closes: 'never' }],
  portsCountedBy: 'branches',
  fields: {
    /** How many branch connections it has, used and plugged; a whole number from 1. */
    branches: quantity('count'),
  },
})

/** A potable header as written: plain text values. */
export interface PotableHeaderWritten extends WrittenOf<typeof potableHeader> {}
