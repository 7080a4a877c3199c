import { quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A valve that lowers the pressure of the water service for the house. */
export const pressureReducer = kind('pressureReducer', {
  spoken: 'pressure reducer',
  place: 'fill',
  ports: { in: 'potableCold', out: 'potableCold' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never', checks: { when: 'bypass', is: 'no' }, restricts: true }],
  fields: {
    /** Pressure behind it; psi, commonly 45 to 80. */
    setPressure: quantity('pressure'),
    /** Whether a built-in bypass lets heated water swell back through it. */
    bypass: yesNo,
  },
})

/** A pressure reducer as written: plain text values. */
export interface PressureReducerWritten extends WrittenOf<typeof pressureReducer> {}
