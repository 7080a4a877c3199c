import { choice, quantity, reference, yesNo } from '../field.js'
import { kind } from '../kind.js'
import { pipeType } from '../pipe-type.js'
import type { WrittenOf } from '../written.js'

/** The round of hot water through the house and back to its source. */
export const recirculationLoop = kind('recirculationLoop', {
  spoken: 'recirculation loop',
  place: 'hotWater',
  fields: {
    /** The tank whose water goes round. */
    source: reference(['indirectTank', 'waterHeater'], { countedAs: 'recirculationLoops' }),
    /** Where the return joins. */
    returnsTo: choice({
      tank: 'the tank',
      'tank-cold-inlet': 'the cold inlet of the tank',
      'mixing-valve-cold': 'the cold inlet of the mixing valve and the tank',
      'mixed-outlet': 'the mixed outlet',
      'dead-end': 'nowhere',
    }),
    /** Temperature at which the water comes back, measured; degF, commonly 110 to 130. */
    returnTemperature: quantity('temperature'),
    /** Water that goes round; gpm, above zero. */
    flow: quantity('volumeFlow'),
    /** Velocity in its smallest pipe; feet per second, commonly 0.5 to 3. */
    velocity: quantity('velocity'),
    /** What its return pipe is made of. */
    material: pipeType,
    /** Size of its return pipe; nominal inches, commonly 1/2 to 3/4. */
    size: quantity('nominalSize'),
    /** Length of its return pipe; feet, above zero. */
    length: quantity('length'),
    /** Whether flow and return are insulated along their whole length. */
    insulated: yesNo,
    /** Thickness of that insulation; inches, commonly 1/2 to 1-1/2. */
    insulationThickness: quantity('length'),
    /** Whether a check valve keeps the return from running backwards. */
    checkFitted: yesNo,
  },
})

/** A recirculation loop as written: plain text values. */
export interface RecirculationLoopWritten extends WrittenOf<typeof recirculationLoop> {}
