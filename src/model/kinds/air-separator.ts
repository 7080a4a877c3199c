import { pressurePart } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A body that takes air out of the passing water, with a tapping for the expansion tank below and for a vent on top. */
export const airSeparator = kind('airSeparator', {
  spoken: 'air separator',
  place: 'expansion',
  families: [pressurePart],
  ports: { in: 'heatingWater', out: 'heatingWater', tank: 'heatingWater', vent: 'heatingWater' },
  through: ['in', 'out'],
  ways: [
    { between: ['in', 'out'], closes: 'never' },
    { between: ['in', 'tank'], closes: 'never' },
    { between: ['in', 'vent'], closes: 'never' },
    { between: ['out', 'tank'], closes: 'never' },
    { between: ['out', 'vent'], closes: 'never' },
    { between: ['tank', 'vent'], closes: 'never' },
  ],
  fields: { ...pressurePart.fields },
})

/** An air separator as written: plain text values. */
export interface AirSeparatorWritten extends WrittenOf<typeof airSeparator> {}
