import { closable, pressurePart } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A valve that shuts a return while a hose port beside it lets air and water out. */
export const purgeValve = kind('purgeValve', {
  spoken: 'purge valve',
  place: 'boiler',
  families: [closable, pressurePart],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'always' }],
  fields: {
    ...closable.fields,
    ...pressurePart.fields,
  },
})

/** A purge valve as written: plain text values. */
export interface PurgeValveWritten extends WrittenOf<typeof purgeValve> {}
