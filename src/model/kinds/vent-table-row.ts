import { quantity } from '../field.js'
import { kind } from '../kind.js'

/** One row of the vent table in the boiler's manual: how long a vent of one size may be. */
export const ventTableRow = kind('ventTableRow', {
  spoken: 'vent table row',
  section: 'parts',
  place: 'vent',
  fields: {
    /** Vent size of the row; nominal inches, commonly 2 to 6. */
    size: quantity('nominalSize'),
    /** Longest equivalent length that the manual allows for this size; feet, above zero. */
    maximumLength: quantity('length'),
    /** Length to be counted for one 90 degree elbow; feet, zero or more. */
    elbow90: quantity('length'),
    /** Length to be counted for one 45 degree elbow; feet, zero or more. */
    elbow45: quantity('length'),
  },
})
