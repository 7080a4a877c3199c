import { emitter, pressurePart } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A length of finned tube behind a baseboard cover. */
export const finTube = kind('finTube', {
  spoken: 'fin-tube baseboard',
  place: 'boiler',
  families: [emitter, pressurePart],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never' }],
  fields: { ...emitter.fields, ...pressurePart.fields },
})

/** A fin-tube baseboard as written: plain text values. */
export interface FinTubeWritten extends WrittenOf<typeof finTube> {}
