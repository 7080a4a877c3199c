import { pressurePart } from '../families.js'
import { yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A pump that moves heating water round a circuit. */
export const circulator = kind('circulator', {
  spoken: 'circulator',
  place: 'boiler',
  families: [pressurePart],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never', checks: { when: 'checkBuiltIn', is: 'yes' } }],
  fields: {
    ...pressurePart.fields,
    /** Whether a check valve is built into its body and in use. */
    checkBuiltIn: yesNo,
  },
})

/** A circulator as written: plain text values. */
export interface CirculatorWritten extends WrittenOf<typeof circulator> {}
