import { choice, quantity, reference, yesNo } from '../field.js'
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
    /** Distance to the opening of the other side of the same boiler; inches, zero or more. */
    intakeDistance: quantity('length'),
    /** Distance to a gas regulator's vent or a meter; inches, zero or more. */
    regulatorDistance: quantity('length'),
    /** Whether it opens over a public walk. */
    overPublicWalk: yesNo,
    /** Whether it is a concentric terminal listed with the boiler. */
    listedConcentric: yesNo,
    /** Distance between exhaust and intake that the maker asks for; inches, zero or more. */
    intakeDistanceWanted: quantity('length'),
    /** Distance to the nearest public walk; feet, zero or more. */
    walkDistance: quantity('length'),
    /** Height above a public walk that it opens over; feet, zero or more. */
    heightAboveWalk: quantity('length'),
    /** Distance to the gas meter; feet, zero or more. */
    meterDistance: quantity('length'),
    /** Distance to the nearest inside corner; inches, zero or more. */
    cornerDistance: quantity('length'),
    /** Distance to the property line that it faces; feet, zero or more. */
    propertyLineDistance: quantity('length'),
    /** Distance to a soffit, deck or balcony above it; inches, zero or more. */
    overhangDistance: quantity('length'),
    /** Distance to the termination of another appliance; inches, zero or more. */
    otherTerminationDistance: quantity('length'),
  },
  parts: { openings: opening },
})

/** A vent termination as written: plain text values. */
export interface VentTerminationWritten extends WrittenOf<typeof ventTermination> {}
