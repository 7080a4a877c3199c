import { choice, quantity, reference } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A control that stops the burner at a water temperature: in normal running, or as a last guard. */
export const temperatureLimit = kind('temperatureLimit', {
  spoken: 'temperature limit',
  place: 'boiler',
  fields: {
    /** Whether it works every day or guards against overheating. */
    type: choice({ operating: 'operating control', high: 'high limit' }),
    /** How it comes back: by hand or by itself. */
    reset: choice({ manual: 'manual reset', automatic: 'automatic reset' }),
    /** Temperature at which it stops the burner; degF, commonly 140 to 210. */
    setting: quantity('temperature'),
    /** Day on which it was made to stop the burner; a date. */
    provedOn: quantity('date'),
    /** The boiler whose burner it stops. */
    boiler: reference('boiler', { countedAs: 'limits' }),
  },
})

/** A temperature limit as written: plain text values. */
export interface TemperatureLimitWritten extends WrittenOf<typeof temperatureLimit> {}
