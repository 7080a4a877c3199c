import { quantity } from '../field.js'
import { kind } from '../kind.js'

/** One point of the curve by which a control sets the supply temperature. */
export const resetPoint = kind('resetPoint', {
  spoken: 'reset curve point',
  section: 'parts',
  place: 'boiler',
  fields: {
    /** Outdoor temperature; degF, commonly -20 to 70. */
    outdoor: quantity('temperature'),
    /** Supply temperature that the control asks for there; degF, commonly 80 to 180. */
    supply: quantity('temperature'),
  },
})
