import { closable } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A hand valve that cuts off cold drinking water, or what drinking water is led into. */
export const potableStop = kind('potableStop', {
  spoken: 'cold water stop',
  place: 'hotWater',
  families: [closable],
  ports: { a: 'eitherWater', b: 'eitherWater' },
  through: ['a', 'b'],
  ways: [{ between: ['a', 'b'], closes: 'always' }],
  fields: { ...closable.fields },
})

/** A cold water stop as written: plain text values. */
export interface PotableStopWritten extends WrittenOf<typeof potableStop> {}
