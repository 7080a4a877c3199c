import { quantity } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A fitting from which several gas pipes start; branches are `branch1`, `branch2` and so on. */
export const gasManifold = kind('gasManifold', {
  spoken: 'gas manifold',
  place: 'gas',
  ports: { main: 'gas', 'branch*': 'gas' },
  ways: [{ between: ['main', 'branch*'], closes: 'never' }],
  portsCountedBy: 'branches',
  fields: {
    /** How many branch connections it has, used and plugged; a whole number from 1. */
    branches: quantity('count'),
  },
})

/** A gas manifold as written: plain text values. */
export interface GasManifoldWritten extends WrittenOf<typeof gasManifold> {}
