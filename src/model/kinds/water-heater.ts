import { fuelBurner, gasAppliance, hotWaterSource, waterVessel } from '../families.js'
import { choice, quantity, reference, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { EntryWritten, WrittenOf } from '../written.js'

/** A water heater with a burner of its own. */
export const waterHeater = kind('waterHeater', {
  spoken: 'water heater',
  place: 'hotWater',
  families: [fuelBurner, gasAppliance, waterVessel, hotWaterSource],
  ports: { gas: 'gas', vent: 'flueGas', cold: 'potableCold', hot: 'potableHot', relief: 'potableHot' },
  ways: [
    { between: ['cold', 'hot'], closes: 'never' },
    { between: ['cold', 'relief'], closes: 'never' },
    { between: ['hot', 'relief'], closes: 'never' },
  ],
  fields: {
    ...fuelBurner.fields,
    ...gasAppliance.fields,
    ...waterVessel.fields,
    ...hotWaterSource.fields,
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
    /** Size of its draft hood outlet; nominal inches, commonly 3 to 6. */
    draftHoodSize: quantity('nominalSize'),
    /** Heat to the water over the heating value of the fuel; percent, commonly 60 to 98. */
    efficiency: quantity('fraction'),
    /** Whether its hot water circulates through the house and back. */
    recirculated: yesNo,
    /** Part of the volume that it gives before it turns cool; percent, commonly 70 to 80. */
    usableFraction: quantity('fraction'),
    /** Highest pressure that its maker allows on the drinking-water side; psi, commonly 100 to 150. */
    potableMaximumPressure: quantity('pressure'),
    /** How copper pipe is joined to its steel. */
    nipples: choice({
      dielectric: 'dielectric fittings',
      brass: 'brass',
      'plastic-lined': 'plastic-lined steel',
      'steel-to-copper': 'steel straight to copper',
    }),
  },
})

/** A water heater as written: plain text values. */
export interface WaterHeaterWritten extends WrittenOf<typeof waterHeater> {
  /** Where the T&P valve of the heater stands: `in-tapping` with nothing but fittings between, `free` of anything that closes but farther off, `blocked`, or `absent`. */
  readonly temperatureRelief?: EntryWritten<'in-tapping' | 'free' | 'blocked' | 'absent'>
}
