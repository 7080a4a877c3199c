import { choice, quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { SingletonWritten } from '../written.js'

/** The water supply as it enters the house. */
export const water = kind('water', {
  spoken: 'water supply',
  section: 'singleton',
  place: 'fill',
  fields: {
    /** Pressure of the supply with nothing running; psi, commonly 30 to 120. */
    staticPressure: quantity('pressure'),
    /** Highest pressure that the drinking-water pipes of the house should see; psi, commonly 80 to 100. */
    highestPressure: quantity('pressure'),
    /** Whether the meter or its setter has a check valve, so that heated water cannot expand into the main. */
    meterCheck: yesNo,
    /** How hard it is: soft below 3.5 grains a gallon, hard from 10 up. */
    hardness: choice({ soft: 'soft', medium: 'of medium hardness', hard: 'hard' }),
    /** Hardness as measured; grains per gallon, commonly 0 to 30. */
    measuredHardness: quantity('concentration'),
    /** Acidity; pH, commonly 6.5 to 8.5. */
    pH: quantity('number'),
    /** Chloride; ppm, commonly 5 to 250. */
    chloride: quantity('concentration'),
    /** Temperature of cold water in winter; degF, commonly 35 to 60. */
    coldest: quantity('temperature'),
    /** Temperature of cold water in summer; degF, commonly 55 to 85. */
    warmest: quantity('temperature'),
    /** Where it comes from. */
    source: choice({ main: 'public main', well: 'own well' }),
  },
})

/** The water supply section as written. */
export interface WaterWritten extends SingletonWritten<typeof water> {}
