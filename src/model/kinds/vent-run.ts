import { choice, quantity, reference, text, yesNo } from '../field.js'
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
    /** The listed vent system to which pipe and fittings belong, in the words of its maker. */
    listedSystem: text,
    /** Standard that is printed on the pipe. */
    standard: choice({
      'ul-1738': 'UL 1738',
      'ulc-s636': 'ULC S636',
      'astm-d1785': 'ASTM D1785',
      'astm-d2665': 'ASTM D2665',
      'astm-f441': 'ASTM F441',
      'astm-f891': 'ASTM F891 (cellular core)',
      other: 'another standard',
    }),
    /** How its joints are made. */
    joints: choice({
      'primed-and-cemented': 'primed and cemented',
      cemented: 'cemented without primer',
      gasketed: 'gaskets, locked',
      unlocked: 'gaskets, not locked',
      mixed: 'mixed',
    }),
    /** Length that runs through unheated space; feet, zero or more. */
    throughUnheated: quantity('length'),
    /** Whether what runs through unheated space is insulated. */
    insulated: yesNo,
    /** Whether floors and rated walls that it passes are closed around it. */
    firestops: yesNo,
    /** Whether another appliance uses the same pipe. */
    shared: yesNo,
  },
  parts: { fittings: ventFitting },
})

/** A vent run as written: plain text values. */
export interface VentRunWritten extends WrittenOf<typeof ventRun> {}
