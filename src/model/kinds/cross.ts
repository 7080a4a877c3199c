import { fitting, pressurePart } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A fitting where two branches leave the run, from `a` to `b`. */
export const cross = kind('cross', {
  spoken: 'cross',
  place: 'boiler',
  families: [fitting, pressurePart],
  ports: { a: 'heatingWater', b: 'heatingWater', left: 'heatingWater', right: 'heatingWater' },
  through: ['a', 'b'],
  ways: [
    { between: ['a', 'b'], closes: 'never' },
    { between: ['a', 'left'], closes: 'never' },
    { between: ['a', 'right'], closes: 'never' },
    { between: ['b', 'left'], closes: 'never' },
    { between: ['b', 'right'], closes: 'never' },
    { between: ['left', 'right'], closes: 'never' },
  ],
  fields: {
    ...fitting.fields,
    ...pressurePart.fields,
  },
})

/** A cross as written: plain text values. */
export interface CrossWritten extends WrittenOf<typeof cross> {}
