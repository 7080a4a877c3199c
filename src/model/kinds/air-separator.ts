import { pressurePart } from '../families.js'
import { quantity } from '../field.js'
import { kind } from '../kind.js'
import type { EntryWritten, WrittenOf } from '../written.js'

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
  fields: {
    ...pressurePart.fields,
    /** Size of its connections; nominal inches, commonly 3/4 to 2. */
    size: quantity('nominalSize'),
    /** Flow coefficient; Cv, commonly 10 to 60. */
    flowCoefficient: quantity('flowCoefficient'),
  },
})

/** An air separator as written: plain text values. */
export interface AirSeparatorWritten extends WrittenOf<typeof airSeparator> {
  /** Where the water in the air separator comes from: hot from the boiler, from the emitters, or mixed from both. */
  readonly separatorWater?: EntryWritten<'boiler' | 'emitters' | 'mixed'>
}
