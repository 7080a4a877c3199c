import { emitter, pressurePart } from '../families.js'
import { quantity } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A coil with a fan, in a room or in ductwork. */
export const fanCoil = kind('fanCoil', {
  spoken: 'fan coil',
  place: 'boiler',
  families: [emitter, pressurePart],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never' }],
  fields: {
    ...emitter.fields,
    ...pressurePart.fields,
    /** Temperature of the water that enters it at the rating; degF, commonly 120 to 200. */
    enteringWater: quantity('temperature'),
    /** Temperature of the air that enters it at the rating; degF, commonly 60 to 70. */
    enteringAir: quantity('temperature'),
    /** Air that its fan moves; cfm, above zero. */
    airflow: quantity('volumeFlow'),
  },
})

/** A fan coil as written: plain text values. */
export interface FanCoilWritten extends WrittenOf<typeof fanCoil> {}
