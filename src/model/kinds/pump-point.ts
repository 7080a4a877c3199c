import { quantity, text } from '../field.js'
import { kind } from '../kind.js'

/** One point of a pump's curve. */
export const pumpPoint = kind('pumpPoint', {
  spoken: 'pump curve point',
  section: 'parts',
  place: 'boiler',
  fields: {
    /** The speed that the curve belongs to, in the maker's words. */
    speed: text,
    /** Flow; gpm, zero or more. */
    flow: quantity('volumeFlow'),
    /** Head that the pump makes at this flow; feet of the fluid, zero or more. */
    head: quantity('head'),
  },
})
