import { emitter, pressurePart } from '../families.js'
import { quantity } from '../field.js'
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
  fields: {
    ...emitter.fields,
    ...pressurePart.fields,
    /** Equivalent direct radiation; square feet EDR, commonly 10 to 100. A square foot gives 150 Btu/h with water at 170 F in a room at 70 F. */
    edr: quantity('area'),
  },
})

/** A cast iron radiator as written: plain text values. */
export interface CastIronRadiatorWritten extends WrittenOf<typeof castIronRadiator> {}
