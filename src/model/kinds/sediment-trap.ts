import { fitting } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A tee with a capped nipple that catches dirt ahead of a gas valve. */
export const sedimentTrap = kind('sedimentTrap', {
  spoken: 'sediment trap',
  place: 'gas',
  families: [fitting],
  ports: { in: 'gas', out: 'gas' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never' }],
  fields: {
    ...fitting.fields,
  },
})

/** A sediment trap as written: plain text values. */
export interface SedimentTrapWritten extends WrittenOf<typeof sedimentTrap> {}
