import { heatingValve, poweredDevice, pressurePart } from '../families.js'
import { choice, quantity } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A powered valve that opens one zone when it calls. */
export const zoneValve = kind('zoneValve', {
  spoken: 'zone valve',
  place: 'electrical',
  families: [pressurePart, poweredDevice, heatingValve],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'always' }],
  draws: 'switched',
  fields: {
    ...pressurePart.fields,
    ...poweredDevice.fields,
    ...heatingValve.fields,
    /** How it stands without power. */
    normally: choice({ open: 'normally open', closed: 'normally closed' }),
    /** How it stands after a failure. */
    failPosition: choice({ open: 'open', closed: 'closed', stays: 'as it was' }),
    /** Greatest difference of pressure against which it shuts; psi, commonly 20 to 60. */
    closePressure: quantity('pressure'),
    /** The contact that tells when it is open. */
    endSwitch: choice({ dry: 'dry contact', powered: 'contact with a voltage of its own', missing: 'no end switch' }),
  },
})

/** A zone valve as written: plain text values. */
export interface ZoneValveWritten extends WrittenOf<typeof zoneValve> {}
