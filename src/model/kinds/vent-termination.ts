import { choice, quantity, reference } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'
import { opening } from './opening.js'

/** The outdoor end of a vent or air pipe, with the openings of the building near it. */
export const ventTermination = kind('ventTermination', {
  spoken: 'vent termination',
  place: 'vent',
  fields: {
    /** What passes through it. */
    serves: choice({
      exhaust: 'exhaust',
      intake: 'air intake',
      concentric: 'exhaust and air intake together',
      'combustion-air-only': 'combustion air for the room only',
    }),
    /** Height of its lowest opening above the ground; inches, zero or more. */
    heightAboveGrade: quantity('length'),
    /** The vent run that ends in it. */
    run: reference('ventRun'),
  },
  parts: { openings: opening },
})

export interface VentTerminationWritten extends WrittenOf<typeof ventTermination> {}
