import { choice, quantity } from '../field.js'
import { kind } from '../kind.js'
import type { SingletonWritten } from '../written.js'

/** What an appliance burns. */
export const fuelType = choice({ 'natural-gas': 'natural gas', propane: 'propane', oil: 'fuel oil' })

/** The fuel that the house is supplied with. */
export const fuel = kind('fuel', {
  spoken: 'fuel',
  section: 'singleton',
  place: 'gas',
  fields: {
    /** Fuel that the supplier delivers. */
    type: fuelType,
    /** Higher heating value of the gas as the utility states it; Btu/ft3, about 1,000 for natural gas and 2,500 for propane. */
    heatingValue: quantity('energyPerVolume'),
    /** What became of the fill and vent pipes of an oil tank no longer used. */
    oldOilPipes: choice({
      'not-there': 'there were none',
      removed: 'removed',
      sealed: 'sealed for good',
      open: 'left open',
    }),
  },
})

/** The fuel section as written. */
export interface FuelWritten extends SingletonWritten<typeof fuel> {}
