import { emitter, pressurePart } from '../families.js'
import { quantity } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A low cast iron panel along the foot of a wall. */
export const castIronBaseboard = kind('castIronBaseboard', {
  spoken: 'cast iron baseboard',
  place: 'boiler',
  families: [emitter, pressurePart],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never' }],
  fields: {
    ...emitter.fields,
    ...pressurePart.fields,
    /** Length of the iron; feet, above zero. */
    elementLength: quantity('length'),
  },
})

/** A cast iron baseboard as written: plain text values. */
export interface CastIronBaseboardWritten extends WrittenOf<typeof castIronBaseboard> {}
