import { backflowDevice } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A device that keeps heating water out of the drinking water. */
export const backflowPreventer = kind('backflowPreventer', {
  spoken: 'backflow preventer',
  place: 'fill',
  families: [backflowDevice],
  ports: { in: 'potableCold', out: 'heatingWater', vent: 'discharge' },
  ways: [{ between: ['in', 'out'], closes: 'never', checks: true }],
  fields: { ...backflowDevice.fields },
})

/** A backflow preventer as written: plain text values. */
export interface BackflowPreventerWritten extends WrittenOf<typeof backflowPreventer> {}
