import { choice, quantity, text } from '../field.js'
import { kind } from '../kind.js'

/** Elbows of one angle in a vent run. */
export const ventFitting = kind('ventFitting', {
  spoken: 'vent fitting',
  section: 'parts',
  place: 'vent',
  fields: {
    /** Angle of the elbow. */
    type: choice({ elbow90: '90 degree elbow', elbow45: '45 degree elbow' }),
    /** How many of them the run has; a whole number, zero or more. */
    count: quantity('count'),
    /** The listed vent system to which it belongs, in the words of its maker. */
    listedSystem: text,
  },
})
