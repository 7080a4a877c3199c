import { fitting } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A branch in gas pipe. */
export const gasTee = kind('gasTee', {
  spoken: 'gas tee',
  place: 'gas',
  families: [fitting],
  ports: { a: 'gas', b: 'gas', branch: 'gas' },
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

/** A gas tee as written: plain text values. */
export interface GasTeeWritten extends WrittenOf<typeof gasTee> {}
