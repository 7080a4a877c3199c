import { emitter, pressurePart } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A standing radiator of cast iron sections. */
export const castIronRadiator = kind('castIronRadiator', {
  spoken: 'cast iron radiator',
  place: 'boiler',
  families: [emitter, pressurePart],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never' }],
  fields: { ...emitter.fields, ...pressurePart.fields },
})

/** A cast iron radiator as written: plain text values. */
export interface CastIronRadiatorWritten extends WrittenOf<typeof castIronRadiator> {}
