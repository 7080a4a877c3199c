import { choice, quantity } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A pressure-reducing valve that fills the heating system. */
export const fillValve = kind('fillValve', {
  spoken: 'fill valve',
  place: 'fill',
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'always', checks: true, restricts: true }],
  fields: {
    /** Pressure to which it fills; psi, commonly 12 to 30. */
    setPressure: quantity('pressure'),
    /** How the fill line is left in service. */
    position: choice({ open: 'left open', closed: 'closed after filling' }),
  },
})

/** A fill valve as written: plain text values. */
export interface FillValveWritten extends WrittenOf<typeof fillValve> {}
