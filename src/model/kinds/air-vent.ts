import { pressurePart } from '../families.js'
import { choice } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A manual or automatic vent that lets air out of the heating water. */
export const airVent = kind('airVent', {
  spoken: 'air vent',
  place: 'expansion',
  families: [pressurePart],
  ports: { port: 'heatingWater' },
  fields: {
    ...pressurePart.fields,
    /** How it opens. */
    type: choice({ automatic: 'automatic vent', manual: 'vent opened by hand' }),
  },
})

/** An air vent as written: plain text values. */
export interface AirVentWritten extends WrittenOf<typeof airVent> {}
