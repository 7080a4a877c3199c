import { quantity } from '../field.js'
import { kind } from '../kind.js'

/** One point of the efficiency curve in the boiler's manual. */
export const efficiencyPoint = kind('efficiencyPoint', {
  spoken: 'efficiency point',
  section: 'parts',
  place: 'boiler',
  fields: {
    /** Temperature of the water that comes back to the boiler; degF, commonly 80 to 180. */
    returnTemperature: quantity('temperature'),
    /** Heat to the water over the higher heating value of the fuel; percent, commonly 80 to 98. */
    efficiency: quantity('fraction'),
  },
})
