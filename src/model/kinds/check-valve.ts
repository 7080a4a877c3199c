import { heatingValve, pressurePart } from '../families.js'
import { choice } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A valve that lets heating water through in one direction only. */
export const checkValve = kind('checkValve', {
  spoken: 'check valve',
  place: 'boiler',
  families: [pressurePart, heatingValve],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never', checks: true }],
  fields: {
    ...pressurePart.fields,
    ...heatingValve.fields,
    /** How it closes. */
    type: choice({ swing: 'swing check', spring: 'spring check', weighted: 'weighted flow check' }),
  },
})

/** A check valve as written: plain text values. */
export interface CheckValveWritten extends WrittenOf<typeof checkValve> {}
