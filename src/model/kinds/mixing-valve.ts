import { choice, quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { EntryWritten, WrittenOf } from '../written.js'

/** A thermostatic valve that tempers hot water with cold. Its element may shut either side. */
export const mixingValve = kind('mixingValve', {
  spoken: 'mixing valve',
  place: 'hotWater',
  ports: { hot: 'potableHot', cold: 'potableCold', mixed: 'potableHot' },
  through: ['hot', 'mixed'],
  ways: [
    { between: ['hot', 'mixed'], closes: 'always', restricts: true },
    { between: ['cold', 'mixed'], closes: 'always', restricts: true },
  ],
  fields: {
    /** Temperature of mixed water to which it is set; degF, commonly 105 to 125. */
    setTemperature: quantity('temperature'),
    /** Use for which it is listed. */
    class: choice({
      distribution: 'hot-water distribution (ASSE 1017)',
      'point-of-use': 'point of use (ASSE 1070)',
      shower: 'shower (ASSE 1016)',
    }),
    /** What it tempers. */
    serves: choice({ house: 'the whole house', fixture: 'one fixture or room' }),
    /** Whether check valves stand on both its hot and its cold inlet. */
    inletChecks: yesNo,
    /** Lowest flow at which it holds the temperature; gpm, commonly 0.5 to 4. */
    minimumFlow: quantity('volumeFlow'),
    /** Highest flow for which its maker rates it; gpm, above zero. */
    maximumFlow: quantity('volumeFlow'),
    /** Least difference between hot and mixed water that it needs; degF, commonly 5 to 27. */
    leastDifference: quantity('temperatureDifference'),
    /** Flow coefficient; Cv, commonly 1 to 10. */
    flowCoefficient: quantity('flowCoefficient'),
    /** Whether hot and cold reach it at the same pressure. */
    equalPressures: yesNo,
    /** Whether its setting is locked. */
    settingLocked: yesNo,
    /** Day on which its mixed water was last measured; a date. */
    outletMeasuredOn: quantity('date'),
  },
})

/** A mixing valve as written: plain text values. */
export interface MixingValveWritten extends WrittenOf<typeof mixingValve> {
  /** Where the mixing valve takes its cold water: from the `tank-line`, the cold line of the tank with no pressure reducer between, or from an `other-line`. */
  readonly coldSource?: EntryWritten<'tank-line' | 'other-line'>
}
