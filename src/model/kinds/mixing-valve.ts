import { choice, quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

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
  },
})

/** A mixing valve as written: plain text values. */
export interface MixingValveWritten extends WrittenOf<typeof mixingValve> {}
