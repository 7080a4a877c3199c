import { poweredDevice } from '../families.js'
import { reference } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A motor or wax element that moves a valve or a damper. */
export const actuator = kind('actuator', {
  spoken: 'actuator',
  place: 'electrical',
  families: [poweredDevice],
  draws: 'switched',
  fields: {
    ...poweredDevice.fields,
    /** The valve that it moves. */
    moves: reference(['heatingMixingValve', 'balancingValve', 'thermostaticValve'], { countedAs: 'actuators' }),
  },
})

/** An actuator as written: plain text values. */
export interface ActuatorWritten extends WrittenOf<typeof actuator> {}
