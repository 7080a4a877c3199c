import { closable, heatingValve, pressurePart } from '../families.js'
import { quantity, text } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A valve that is throttled to share the flow among circuits; it can also be shut. */
export const balancingValve = kind('balancingValve', {
  spoken: 'balancing valve',
  place: 'boiler',
  families: [closable, pressurePart, heatingValve],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'always', restricts: true }],
  fields: {
    ...closable.fields,
    ...pressurePart.fields,
    ...heatingValve.fields,
    /** Flow to which it shall be set; gpm, above zero. */
    designFlow: quantity('volumeFlow'),
    /** How it is set: turns or mark. */
    setting: text,
  },
})

/** A balancing valve as written: plain text values. */
export interface BalancingValveWritten extends WrittenOf<typeof balancingValve> {}
