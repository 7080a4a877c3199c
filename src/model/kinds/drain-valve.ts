import { pressurePart } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A valve through which heating water is let out. */
export const drainValve = kind('drainValve', {
  spoken: 'drain valve',
  place: 'boiler',
  families: [pressurePart],
  ports: { port: 'heatingWater' },
  fields: {
    ...pressurePart.fields,
  },
})

/** A drain valve as written: plain text values. */
export interface DrainValveWritten extends WrittenOf<typeof drainValve> {}
