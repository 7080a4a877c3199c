import { choice, listOf, quantity, reference, text, yesNo } from '../field.js'
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
      drain: 'drain pipe',
    }),
    /** What the pipe was filled with under pressure. */
    testFluid: choice({ water: 'water', air: 'air or inert gas', 'fuel-gas': 'fuel gas' }),
    /** Pressure that was held; psi, above zero. */
    pressure: quantity('pressure'),
    /** How long it was held; minutes, above zero. */
    duration: quantity('time'),
    /** Whether everything rated below the test pressure was isolated from it. */
    isolated: yesNo,
    /** Whether an official watched it. */
    witnessed: yesNo,
    /** Pressure at the end; psi, zero or more. */
    endPressure: quantity('pressure'),
    /** Time of day at which it began. */
    startedAt: text,
    /** Time of day at which it ended. */
    endedAt: text,
    /** Low end of the scale of the gauge; psi, commonly 0. */
    gaugeLow: quantity('pressure'),
    /** High end of the scale of the gauge; psi, commonly 15 to 200. */
    gaugeHigh: quantity('pressure'),
    /** What stood under the test pressure. */
    contains: listOf(
      reference(['pressurePart', 'reliefValve', 'gasAppliance', 'fillValve', 'backflowDevice'], {
        countedAs: 'testsIncluding',
      }),
    ),
    /** What was shut off or taken out for the test. */
    isolates: listOf(
      reference(['pressurePart', 'reliefValve', 'gasAppliance', 'fillValve', 'backflowDevice'], {
        countedAs: 'testsIsolating',
      }),
    ),
    /** Whether a photo shows pressure and time at the beginning. */
    startSeen: yesNo,
    /** Whether a photo shows pressure and time at the end. */
    endSeen: yesNo,
    /** What the pressure did. */
    result: choice({ held: 'held', fell: 'fell' }),
  },
})

/** A test as written: plain text values. */
export interface TestWritten extends ItemWritten<typeof test> {}
