import { heatingValve, poweredDevice, pressurePart } from '../families.js'
import { choice } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A powered three-way valve that sends the water one way or the other. */
export const divertingValve = kind('divertingValve', {
  spoken: 'diverting valve',
  place: 'electrical',
  families: [heatingValve, pressurePart, poweredDevice],
  ports: { in: 'heatingWater', a: 'heatingWater', b: 'heatingWater' },
  ways: [
    { between: ['in', 'a'], closes: 'always' },
    { between: ['in', 'b'], closes: 'always' },
  ],
  draws: 'switched',
  fields: {
    ...heatingValve.fields,
    ...pressurePart.fields,
    ...poweredDevice.fields,
    /** Which way it leads without power. */
    failPosition: choice({ a: 'towards a', b: 'towards b', stays: 'as it was' }),
  },
})

/** A diverting valve as written: plain text values. */
export interface DivertingValveWritten extends WrittenOf<typeof divertingValve> {}
