import { quantity } from '../field.js'
import { kind } from '../kind.js'

/** One row of the altitude table in the boiler's manual. */
export const altitudeRow = kind('altitudeRow', {
  spoken: 'altitude table row',
  section: 'parts',
  place: 'boiler',
  fields: {
    /** Height above sea level; feet, zero or more. */
    altitude: quantity('length'),
    /** Part of the nameplate input that is left there; percent, 0 to 100. */
    share: quantity('fraction'),
  },
})
