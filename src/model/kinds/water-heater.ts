import { fuelBurner } from '../families.js'
import { choice, quantity, reference } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A water heater with a burner of its own. */
export const waterHeater = kind('waterHeater', {
  spoken: 'water heater',
  place: 'hotWater',
  families: [fuelBurner],
  ports: { gas: 'gas', vent: 'flueGas', cold: 'potableCold', hot: 'potableHot', relief: 'potableHot' },
  ways: [
    { between: ['cold', 'hot'], closes: 'never' },
    { between: ['cold', 'relief'], closes: 'never' },
    { between: ['hot', 'relief'], closes: 'never' },
  ],
  fields: {
    ...fuelBurner.fields,
    /** How its flue gas is moved out. */
    venting: choice({
      'draft-hood': 'draft hood',
      'fan-assisted': 'fan-assisted',
      direct: 'direct vent',
      'no-vent': 'no vent',
    }),
    /** Open area of its draft hood outlet; square inches, above zero. */
    draftHoodArea: quantity('area'),
    /** The chimney flue that it vents into. */
    flue: reference('chimneyFlue', { countedAs: 'appliances' }),
    /** Water it holds; gallons, zero for one without a tank. */
    volume: quantity('volume'),
    /** Temperature at which it keeps the water; degF, commonly 110 to 140. */
    storedTemperature: quantity('temperature'),
  },
})

/** A water heater as written: plain text values. */
export interface WaterHeaterWritten extends WrittenOf<typeof waterHeater> {}
