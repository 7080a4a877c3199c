import { emitter, pressurePart } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A ladder of tubes in a bathroom that also dries towels. */
export const towelRadiator = kind('towelRadiator', {
  spoken: 'towel radiator',
  place: 'boiler',
  families: [emitter, pressurePart],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never' }],
  fields: {
    ...emitter.fields,
    ...pressurePart.fields,
  },
})

/** A towel radiator as written: plain text values. */
export interface TowelRadiatorWritten extends WrittenOf<typeof towelRadiator> {}
