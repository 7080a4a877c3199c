import { choice, quantity, reference } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A thermometer that shows the temperature of the heating water. */
export const thermometer = kind('thermometer', {
  spoken: 'thermometer',
  place: 'boiler',
  fields: {
    /** Low end of its scale; degF, commonly 30 to 80. */
    low: quantity('temperature'),
    /** High end of its scale; degF, commonly 200 to 320. */
    high: quantity('temperature'),
    /** Where it is read. */
    position: choice({ supply: 'supply', return: 'return', boiler: 'boiler', tank: 'tank', mixed: 'mixed water' }),
    /** The boiler to which it belongs. */
    boiler: reference('boiler', { countedAs: 'thermometers' }),
  },
})

/** A thermometer as written: plain text values. */
export interface ThermometerWritten extends WrittenOf<typeof thermometer> {}
