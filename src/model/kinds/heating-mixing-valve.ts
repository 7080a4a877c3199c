import { heatingValve, pressurePart } from '../families.js'
import { choice, quantity, reference } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A three-way valve that mixes return water into the supply, so that a circuit gets water no hotter than it bears. */
export const heatingMixingValve = kind('heatingMixingValve', {
  spoken: 'heating mixing valve',
  place: 'boiler',
  families: [heatingValve, pressurePart],
  ports: { hot: 'heatingWater', return: 'heatingWater', mixed: 'heatingWater' },
  through: ['hot', 'mixed'],
  ways: [
    { between: ['hot', 'mixed'], closes: 'always', restricts: true },
    { between: ['return', 'mixed'], closes: 'always', restricts: true },
  ],
  fields: {
    ...heatingValve.fields,
    ...pressurePart.fields,
    /** Temperature of mixed water to which it is set; degF, commonly 85 to 150. */
    setTemperature: quantity('temperature'),
    /** Hottest mixed water that it can be set to or fail to; degF, commonly 120 to 180. */
    highestSetting: quantity('temperature'),
    /** What moves it. */
    drive: choice({ thermostatic: 'thermostatic element', motor: 'motor' }),
    /** How it stands without power or with a broken element. */
    failPosition: choice({ cold: 'on the cold side', hot: 'on the hot side', stays: 'as it was' }),
    /** The zone that gets the mixed water. */
    serves: reference('zone', { countedAs: 'mixingValves' }),
  },
})

/** A heating mixing valve as written: plain text values. */
export interface HeatingMixingValveWritten extends WrittenOf<typeof heatingMixingValve> {}
