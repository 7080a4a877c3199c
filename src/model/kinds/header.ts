import { pressurePart } from '../families.js'
import { quantity } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A pipe or manifold that one main and several branches join; branches are `branch1`, `branch2` and so on. */
export const header = kind('header', {
  spoken: 'header',
  place: 'boiler',
  families: [pressurePart],
  ports: { main: 'heatingWater', 'branch*': 'heatingWater' },
  ways: [{ between: ['main', 'branch*'], closes: 'never' }],
  portsCountedBy: 'branches',
  fields: {
    ...pressurePart.fields,
    /** How many branch connections it has, used and plugged; a whole number from 1. */
    branches: quantity('count'),
  },
})

/** A header as written: plain text values. */
export interface HeaderWritten extends WrittenOf<typeof header> {}
