import { pressurePart } from '../families.js'
import { yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A screen that holds back debris; it can clog. */
export const strainer = kind('strainer', {
  spoken: 'strainer',
  place: 'boiler',
  families: [pressurePart],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never', restricts: true }],
  fields: {
    ...pressurePart.fields,
    /** Whether the screen can be cleaned without draining the system. */
    cleanable: yesNo,
  },
})

/** A strainer as written: plain text values. */
export interface StrainerWritten extends WrittenOf<typeof strainer> {}
