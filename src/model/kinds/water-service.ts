import { quantity } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** The place where drinking water enters the house, downstream of the meter. */
export const waterService = kind('waterService', {
  spoken: 'water service',
  place: 'fill',
  ports: { out: 'potableCold' },
  fields: {
    /** Size of the pipe; nominal inches, commonly 3/4 to 1-1/2. */
    size: quantity('nominalSize'),
  },
})

/** A water service as written: plain text values. */
export interface WaterServiceWritten extends WrittenOf<typeof waterService> {}
