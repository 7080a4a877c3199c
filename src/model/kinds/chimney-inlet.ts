import { choice, quantity } from '../field.js'
import { kind } from '../kind.js'

/** A hole in the chimney into which an appliance is or was connected. */
export const chimneyInlet = kind('chimneyInlet', {
  spoken: 'chimney inlet',
  section: 'parts',
  place: 'vent',
  fields: {
    /** How it stands now. */
    state: choice({ used: 'used by an appliance', sealed: 'sealed for good', open: 'left open' }),
    /** Size of the connector that it takes; nominal inches, commonly 4 to 8. */
    size: quantity('nominalSize'),
  },
})
