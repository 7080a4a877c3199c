import { hotWaterSource } from '../families.js'
import { choice, quantity, reference } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** The drinking-water side of a boiler with built-in hot water. */
export const builtInWaterHeater = kind('builtInWaterHeater', {
  spoken: 'built-in water heater',
  place: 'hotWater',
  families: [hotWaterSource],
  ports: { cold: 'potableCold', hot: 'potableHot' },
  through: ['cold', 'hot'],
  ways: [{ between: ['cold', 'hot'], closes: 'never' }],
  fields: {
    ...hotWaterSource.fields,
    /** The boiler that it is built into. */
    boiler: reference('boiler', { countedAs: 'builtInWaterHeaters' }),
    /** How it heats the water. */
    type: choice({ 'plate-exchanger': 'plate heat exchanger', coil: 'coil in the boiler water' }),
    /** Walls between heating fluid and drinking water. */
    walls: choice({ single: 'single wall', double: 'double wall with a leak path' }),
    /** Hot water that it gives without end; gpm, above zero. */
    ratedFlow: quantity('volumeFlow'),
    /** Rise of the water at that flow; degF, commonly 70 to 77. */
    ratedRise: quantity('temperatureDifference'),
  },
})

/** A built-in water heater as written: plain text values. */
export interface BuiltInWaterHeaterWritten extends WrittenOf<typeof builtInWaterHeater> {}
