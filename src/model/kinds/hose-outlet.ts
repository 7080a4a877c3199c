import { yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A tap for a hose on drinking-water pipe. */
export const hoseOutlet = kind('hoseOutlet', {
  spoken: 'hose outlet',
  place: 'fill',
  ports: { in: 'potableCold' },
  fields: {
    /** Whether a vacuum breaker keeps water from being drawn back through the hose. */
    vacuumBreaker: yesNo,
  },
})

/** A hose outlet as written: plain text values. */
export interface HoseOutletWritten extends WrittenOf<typeof hoseOutlet> {}
