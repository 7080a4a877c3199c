import { pressurePart } from '../families.js'
import { quantity } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A gauge that shows the pressure of the heating water. */
export const pressureGauge = kind('pressureGauge', {
  spoken: 'pressure gauge',
  place: 'relief',
  families: [pressurePart],
  ports: { port: 'heatingWater' },
  fields: {
    ...pressurePart.fields,
    /** Low end of its scale; psi, commonly 0. */
    low: quantity('pressure'),
    /** High end of its scale; psi, commonly 60 to 100. */
    high: quantity('pressure'),
  },
})

/** A pressure gauge as written: plain text values. */
export interface PressureGaugeWritten extends WrittenOf<typeof pressureGauge> {}
