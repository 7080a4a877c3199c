import { poweredDevice } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A room or tank control that calls for heat. */
export const thermostat = kind('thermostat', {
  spoken: 'thermostat',
  place: 'electrical',
  families: [poweredDevice],
  draws: 'steady',
  fields: { ...poweredDevice.fields },
})

/** A thermostat as written: plain text values. */
export interface ThermostatWritten extends WrittenOf<typeof thermostat> {}
