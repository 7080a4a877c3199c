import { pressurePart } from '../families.js'
import { choice, quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { EntryWritten, WrittenOf } from '../written.js'

/** A hot water tank that the boiler heats through a coil. Its `maximumPressure` is that of the coil side. */
export const indirectTank = kind('indirectTank', {
  spoken: 'indirect tank',
  place: 'hotWater',
  families: [pressurePart],
  ports: {
    coilIn: 'heatingWater',
    coilOut: 'heatingWater',
    cold: 'potableCold',
    hot: 'potableHot',
    relief: 'potableHot',
  },
  through: ['coilIn', 'coilOut'],
  ways: [
    { between: ['coilIn', 'coilOut'], closes: 'never' },
    { between: ['cold', 'hot'], closes: 'never' },
    { between: ['cold', 'relief'], closes: 'never' },
    { between: ['hot', 'relief'], closes: 'never' },
  ],
  fields: {
    ...pressurePart.fields,
    /** Potable water it holds; gallons, above zero. */
    volume: quantity('volume'),
    /** Temperature at which it keeps the water; degF, commonly 120 to 160. */
    storedTemperature: quantity('temperature'),
    /** Whether its hot water circulates through the house and back. */
    recirculated: yesNo,
    /** Walls between heating fluid and drinking water in its coil. */
    coilWall: choice({ single: 'single wall', double: 'double wall with a leak path' }),
  },
})

/** An indirect tank as written: plain text values. */
export interface IndirectTankWritten extends WrittenOf<typeof indirectTank> {
  /** Whether a check valve or a meter keeps heated water from swelling back into the main. */
  readonly coldSideClosed?: EntryWritten<'yes' | 'no'>
  /** Whether the tank reaches a potable expansion tank, and whether a valve between them can be shut. */
  readonly potableExpansion?: EntryWritten<'reachable' | 'closable' | 'absent'>
}
