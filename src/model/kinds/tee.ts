import { fitting, pressurePart } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A fitting where a branch leaves the run, from `a` to `b`. */
export const tee = kind('tee', {
  spoken: 'tee',
  place: 'boiler',
  families: [fitting, pressurePart],
  ports: { a: 'heatingWater', b: 'heatingWater', branch: 'heatingWater' },
  through: ['a', 'b'],
  ways: [
    { between: ['a', 'b'], closes: 'never' },
    { between: ['a', 'branch'], closes: 'never' },
    { between: ['b', 'branch'], closes: 'never' },
  ],
  fields: { ...fitting.fields, ...pressurePart.fields },
})

/** A tee as written: plain text values. */
export interface TeeWritten extends WrittenOf<typeof tee> {}
