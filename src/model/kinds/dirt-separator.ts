import { pressurePart } from '../families.js'
import { quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A body that holds back dirt and magnetite; it can clog. */
export const dirtSeparator = kind('dirtSeparator', {
  spoken: 'dirt separator',
  place: 'boiler',
  families: [pressurePart],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never', restricts: true }],
  fields: {
    ...pressurePart.fields,
    /** Size of its connections; nominal inches, commonly 3/4 to 2. */
    size: quantity('nominalSize'),
    /** Flow coefficient; Cv, commonly 10 to 60. */
    flowCoefficient: quantity('flowCoefficient'),
    /** Whether a magnet in it holds back iron oxide. */
    magnetic: yesNo,
  },
})

/** A dirt separator as written: plain text values. */
export interface DirtSeparatorWritten extends WrittenOf<typeof dirtSeparator> {}
