import { fuelBurner, gasAppliance } from '../families.js'
import { choice, reference } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A gas appliance that heats neither the house nor its hot water. */
export const otherGasAppliance = kind('otherGasAppliance', {
  spoken: 'other gas appliance',
  place: 'gas',
  families: [fuelBurner, gasAppliance],
  ports: { gas: 'gas' },
  fields: {
    ...fuelBurner.fields,
    ...gasAppliance.fields,
    /** What it is. */
    type: choice({
      range: 'range',
      dryer: 'clothes dryer',
      fireplace: 'fireplace',
      furnace: 'furnace or space heater',
      grill: 'grill',
      generator: 'generator',
      'pool-heater': 'pool heater',
      other: 'other appliance',
    }),
    /** The chimney flue that it vents into. */
    flue: reference('chimneyFlue', { countedAs: 'appliances' }),
  },
})

/** An other gas appliance as written: plain text values. */
export interface OtherGasApplianceWritten extends WrittenOf<typeof otherGasAppliance> {}
