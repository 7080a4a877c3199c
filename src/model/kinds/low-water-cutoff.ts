import { pressurePart } from '../families.js'
import { choice, reference, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { EntryWritten, WrittenOf } from '../written.js'

/** A device of its own that stops the burner when water runs short; one that the boiler brings along is a field of the boiler. */
export const lowWaterCutoff = kind('lowWaterCutoff', {
  spoken: 'low-water cutoff',
  place: 'boiler',
  families: [pressurePart],
  ports: { port: 'heatingWater' },
  fields: {
    ...pressurePart.fields,
    /** What it senses with. */
    type: choice({ probe: 'probe', float: 'float', flow: 'flow switch' }),
    /** How it comes back: by hand or by itself. */
    reset: choice({ manual: 'manual reset', automatic: 'automatic reset' }),
    /** How it can be tested. */
    test: choice({ 'test-button': 'a test button', 'drain-down': 'only by draining', 'not-testable': 'nothing' }),
    /** Whether it is listed as a low-water cutoff. */
    listed: yesNo,
    /** The boiler whose burner it stops. */
    boiler: reference('boiler', { countedAs: 'lowWaterCutoffs' }),
  },
})

/** A low-water cutoff as written: plain text values. */
export interface LowWaterCutoffWritten extends WrittenOf<typeof lowWaterCutoff> {
  /** Whether the low-water cutoff stays joined to a boiler with everything shut that can be. */
  readonly cutoffInVolume?: EntryWritten<'yes' | 'no'>
}
