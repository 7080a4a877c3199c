import { quantity } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** The meter at which the utility hands over the gas. */
export const gasMeter = kind('gasMeter', {
  spoken: 'gas meter',
  place: 'gas',
  ports: { out: 'gas' },
  fields: {
    /** Gas that it may pass; cubic feet per hour, commonly 175 to 1,000. */
    capacity: quantity('gasFlow'),
    /** Pressure behind it; inches of water column or psi, commonly 7 in wc or 2 psi. */
    deliveryPressure: quantity('pressure'),
  },
})

/** A gas meter as written: plain text values. */
export interface GasMeterWritten extends WrittenOf<typeof gasMeter> {}
