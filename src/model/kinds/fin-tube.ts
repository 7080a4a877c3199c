import { emitter, pressurePart } from '../families.js'
import { quantity } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A length of finned tube behind a baseboard cover. */
export const finTube = kind('finTube', {
  spoken: 'fin-tube baseboard',
  place: 'boiler',
  families: [emitter, pressurePart],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never' }],
  fields: {
    ...emitter.fields,
    ...pressurePart.fields,
    /** Length of the finned part; feet, above zero. */
    elementLength: quantity('length'),
    /** Heat that a foot gives at the rating; Btu/h ft, commonly 400 to 800. */
    ratedOutputPerLength: quantity('heatRatePerLength'),
  },
})

/** A fin-tube baseboard as written: plain text values. */
export interface FinTubeWritten extends WrittenOf<typeof finTube> {}
