import { fitting, pressurePart } from '../families.js'
import { quantity } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** Two tees next to each other by which a second circuit hangs on a first without disturbing it. */
export const closelySpacedTees = kind('closelySpacedTees', {
  spoken: 'closely spaced tees',
  place: 'boiler',
  families: [fitting, pressurePart],
  ports: {
    primaryIn: 'heatingWater',
    primaryOut: 'heatingWater',
    secondaryOut: 'heatingWater',
    secondaryIn: 'heatingWater',
  },
  through: ['primaryIn', 'primaryOut'],
  ways: [
    { between: ['primaryIn', 'primaryOut'], closes: 'never' },
    { between: ['primaryIn', 'secondaryOut'], closes: 'never' },
    { between: ['primaryIn', 'secondaryIn'], closes: 'never' },
    { between: ['primaryOut', 'secondaryOut'], closes: 'never' },
    { between: ['primaryOut', 'secondaryIn'], closes: 'never' },
    { between: ['secondaryOut', 'secondaryIn'], closes: 'never' },
  ],
  fields: {
    ...fitting.fields,
    ...pressurePart.fields,
    /** Distance from tee to tee, between centers; inches, above zero. */
    spacing: quantity('length'),
    /** Size of the run between them; nominal inches, commonly 3/4 to 2. */
    size: quantity('nominalSize'),
  },
})

/** Two closely spaced tees as written: plain text values. */
export interface CloselySpacedTeesWritten extends WrittenOf<typeof closelySpacedTees> {}
