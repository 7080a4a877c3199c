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
    /** Pressure at which gas is delivered to the house piping; inches of water column or psi, commonly 7 in wc or 2 psi. */
    deliveryPressure: quantity('pressure'),
    /** Greatest loss of pressure for which the house piping is sized; inches of water column, commonly 0.3 to 0.5. */
    allowedDrop: quantity('pressure'),
    /** Density of the gas over that of air; a number, about 0.6 for natural gas and 1.5 for propane. */
    specificGravity: quantity('number'),
  },
})

/** The fuel section as written. */
export interface FuelWritten extends SingletonWritten<typeof fuel> {}
