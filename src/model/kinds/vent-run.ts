import { choice, quantity, reference, yesNo } from '../field.js'
import { kind } from '../kind.js'
import { ventMaterial } from '../vent-material.js'
import type { WrittenOf } from '../written.js'
import { ventFitting } from './vent-fitting.js'

/** The pipe of one side of a vent system, from the appliance to its termination. */
export const ventRun = kind('ventRun', {
  spoken: 'vent run',
  place: 'vent',
  fields: {
    /** What the pipe carries. */
    side: choice({
      exhaust: 'exhaust',
      intake: 'air intake',
      concentric: 'exhaust and air intake, one inside the other',
    }),
    /** The boiler that it serves. */
    appliance: reference(['boiler'], { countedAs: 'ventRuns' }),
    /** What the pipe is made of. */
    material: ventMaterial,
    /** Size of the pipe; nominal inches, commonly 2 to 6. */
    size: quantity('nominalSize'),
    /** Length of its straight pipe, fittings not counted; feet, zero or more. */
    straightLength: quantity('length'),
    /** Fall of its horizontal parts back to the boiler; inches per foot, negative where it falls outward. */
    slope: quantity('slope'),
    /** Longest distance between two supports; feet, above zero. */
    supportSpacing: quantity('length'),
    /** Longest distance between supports that the maker allows; feet, above zero. */
    longestSupportSpacing: quantity('length'),
    /** Whether pipe, fittings, cement and adapters are all of one listed system. */
    oneSystem: yesNo,
    /** Where its far end opens. */
    opensTo: choice({
      outdoors: 'outdoors',
      'clean-space': 'a room with clean air',
      'fouled-space': 'a laundry, salon, pool store or dusty room',
    }),
  },
  parts: { fittings: ventFitting },
})

/** A vent run as written: plain text values. */
export interface VentRunWritten extends WrittenOf<typeof ventRun> {}
