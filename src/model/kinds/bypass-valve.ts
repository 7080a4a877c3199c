import { heatingValve, pressurePart } from '../families.js'
import { quantity } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A valve that opens a short way back when the pump runs against too much. */
export const bypassValve = kind('bypassValve', {
  spoken: 'bypass valve',
  place: 'boiler',
  families: [heatingValve, pressurePart],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'always', restricts: true }],
  fields: {
    ...heatingValve.fields,
    ...pressurePart.fields,
    /** Head at which it begins to open; feet of the fluid, commonly 3 to 20. */
    setHead: quantity('head'),
  },
})

/** A bypass valve as written: plain text values. */
export interface BypassValveWritten extends WrittenOf<typeof bypassValve> {}
