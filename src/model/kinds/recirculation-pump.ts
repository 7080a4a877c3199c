import { choice, quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A pump that moves hot drinking water through the house and back. */
export const recirculationPump = kind('recirculationPump', {
  spoken: 'recirculation pump',
  place: 'hotWater',
  ports: { in: 'potableHot', out: 'potableHot' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never', checks: { when: 'checkBuiltIn', is: 'yes' } }],
  fields: {
    /** What its body is made of. */
    material: choice({ iron: 'iron', bronze: 'bronze', stainless: 'stainless steel' }),
    /** Water that it moves; gpm, above zero. */
    flow: quantity('volumeFlow'),
    /** Whether a check valve is built into its body and in use. */
    checkBuiltIn: yesNo,
  },
})

/** A recirculation pump as written: plain text values. */
export interface RecirculationPumpWritten extends WrittenOf<typeof recirculationPump> {}
