import { choice, quantity, text, yesNo } from '../field.js'
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
    /** What the test was of. */
    system: choice({
      'heating-piping': 'heating piping',
      'gas-piping': 'gas piping',
      'potable-piping': 'drinking-water piping',
      vent: 'vent pipe',
    }),
    /** What the pipe was filled with under pressure. */
    testFluid: choice({ water: 'water', air: 'air or inert gas' }),
    /** Pressure that was held; psi, above zero. */
    pressure: quantity('pressure'),
    /** How long it was held; minutes, above zero. */
    duration: quantity('time'),
    /** Whether everything rated below the test pressure was isolated from it. */
    isolated: yesNo,
    /** Whether an official watched it. */
    witnessed: yesNo,
  },
})

/** A test as written: plain text values. */
export interface TestWritten extends ItemWritten<typeof test> {}
