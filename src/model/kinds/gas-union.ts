import { fitting } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A joint in rigid gas pipe that comes apart without turning the pipe. */
export const gasUnion = kind('gasUnion', {
  spoken: 'gas union',
  place: 'gas',
  families: [fitting],
  ports: { a: 'gas', b: 'gas' },
  through: ['a', 'b'],
  ways: [{ between: ['a', 'b'], closes: 'never' }],
  fields: {
    ...fitting.fields,
  },
})

/** A gas union as written: plain text values. */
export interface GasUnionWritten extends WrittenOf<typeof gasUnion> {}
