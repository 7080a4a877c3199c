import { fitting } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A branch in condensate pipe. */
export const condensateTee = kind('condensateTee', {
  spoken: 'condensate tee',
  place: 'condensate',
  families: [fitting],
  ports: { a: 'condensate', b: 'condensate', branch: 'condensate' },
  through: ['a', 'b'],
  ways: [
    { between: ['a', 'b'], closes: 'never' },
    { between: ['a', 'branch'], closes: 'never' },
    { between: ['b', 'branch'], closes: 'never' },
  ],
  fields: {
    ...fitting.fields,
  },
})

/** A condensate tee as written: plain text values. */
export interface CondensateTeeWritten extends WrittenOf<typeof condensateTee> {}
