import { emitter, pressurePart } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A finned element low in a cabinet through which air rises. */
export const convector = kind('convector', {
  spoken: 'convector',
  place: 'boiler',
  families: [emitter, pressurePart],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never' }],
  fields: {
    ...emitter.fields,
    ...pressurePart.fields,
  },
})

/** A convector as written: plain text values. */
export interface ConvectorWritten extends WrittenOf<typeof convector> {}
