import { closable } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A hand valve that cuts off cold drinking water. */
export const potableStop = kind('potableStop', {
  spoken: 'cold water stop',
  place: 'hotWater',
  families: [closable],
  ports: { a: 'potableCold', b: 'potableCold' },
  through: ['a', 'b'],
  ways: [{ between: ['a', 'b'], closes: 'always' }],
  fields: { ...closable.fields },
})

/** A cold water stop as written: plain text values. */
export interface PotableStopWritten extends WrittenOf<typeof potableStop> {}
