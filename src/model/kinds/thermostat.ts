import { poweredDevice } from '../families.js'
import { choice, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A room or tank control that calls for heat. */
export const thermostat = kind('thermostat', {
  spoken: 'thermostat',
  place: 'electrical',
  families: [poweredDevice],
  draws: 'steady',
  fields: {
    ...poweredDevice.fields,
    /** Whether it calls for heat when the network is down. */
    worksOffline: yesNo,
    /** What it senses. */
    senses: choice({ room: 'the room', tank: 'the tank', floor: 'the floor' }),
  },
})

/** A thermostat as written: plain text values. */
export interface ThermostatWritten extends WrittenOf<typeof thermostat> {}
