import { poweredDevice, pressurePart } from '../families.js'
import { choice } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A powered valve that opens one zone when it calls. */
export const zoneValve = kind('zoneValve', {
  spoken: 'zone valve',
  place: 'electrical',
  families: [pressurePart, poweredDevice],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'always' }],
  draws: 'switched',
  fields: {
    ...pressurePart.fields,
    ...poweredDevice.fields,
    /** How it stands without power. */
    normally: choice({ open: 'normally open', closed: 'normally closed' }),
  },
})

/** A zone valve as written: plain text values. */
export interface ZoneValveWritten extends WrittenOf<typeof zoneValve> {}
