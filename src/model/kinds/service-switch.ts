import { reference, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A switch that takes the power off an appliance for service. */
export const serviceSwitch = kind('serviceSwitch', {
  spoken: 'service switch',
  place: 'electrical',
  fields: {
    /** The appliance that it switches off. */
    appliance: reference('fuelBurner', { countedAs: 'serviceSwitches' }),
    /** Whether it stands in sight of the appliance. */
    inSight: yesNo,
    /** Whether it says what it switches off. */
    marked: yesNo,
  },
})

/** A service switch as written: plain text values. */
export interface ServiceSwitchWritten extends WrittenOf<typeof serviceSwitch> {}
