import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** The place where drinking water enters the house, downstream of the meter. */
export const waterService = kind('waterService', {
  spoken: 'water service',
  place: 'fill',
  ports: { out: 'potableCold' },
  fields: {},
})

/** A water service as written: plain text values. */
export interface WaterServiceWritten extends WrittenOf<typeof waterService> {}
