import { pressurePart } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A body that holds back dirt and magnetite; it can clog. */
export const dirtSeparator = kind('dirtSeparator', {
  spoken: 'dirt separator',
  place: 'boiler',
  families: [pressurePart],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never', restricts: true }],
  fields: { ...pressurePart.fields },
})

/** A dirt separator as written: plain text values. */
export interface DirtSeparatorWritten extends WrittenOf<typeof dirtSeparator> {}
