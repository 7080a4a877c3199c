import { quantity, text } from '../field.js'
import { kind } from '../kind.js'
import type { ItemWritten } from '../written.js'

/** A pressure or function test with its paper. */
export const test = kind('test', {
  spoken: 'test',
  section: 'tests',
  place: 'papers',
  fields: {
    /** What was tested, in words: gas piping at pressure, high limit. */
    quantity: text,
    /** The result, with its unit. */
    value: text,
    /** Day of the test; a date. */
    at: quantity('date'),
    /** Who made the test. */
    by: text,
    /** Who watched it. */
    witness: text,
  },
})

export interface TestWritten extends ItemWritten<typeof test> {}
