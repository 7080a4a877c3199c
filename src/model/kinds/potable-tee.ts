import { fitting } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A branch in drinking-water pipe, cold or hot. */
export const potableTee = kind('potableTee', {
  spoken: 'potable tee',
  place: 'hotWater',
  families: [fitting],
  ports: { a: 'potableCold', b: 'potableCold', branch: 'potableCold' },
  through: ['a', 'b'],
  ways: [
    { between: ['a', 'b'], closes: 'never' },
    { between: ['a', 'branch'], closes: 'never' },
    { between: ['b', 'branch'], closes: 'never' },
  ],
  fields: {},
})

/** A potable tee as written: plain text values. */
export interface PotableTeeWritten extends WrittenOf<typeof potableTee> {}
