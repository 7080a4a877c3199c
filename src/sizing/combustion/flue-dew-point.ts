import type { Fuel } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { dryMoles, productsOf } from './products.js'
import { saturationTemperature } from '../saturation-pressure.js'

interface MoistGas {
  /** Share of water vapor, 0 to 1. */
  readonly waterShare: number
  /** Pa, absolute: the pressure of the air outside. */
  readonly pressure: number
}

interface Flue {
  readonly fuel: Fuel
  /** Share of air beyond what the gas needs, 0.2 for 20 %. */
  readonly excessAir: number
  /** Pa, absolute: the pressure of the air outside. */
  readonly pressure: number
}

interface CondensingBoiler extends Flue {
  /** K by which the flue lies above the water that enters; common practice: 3 to 8 K at low fire, 5 to 15 K at full fire. */
  readonly approach: number
}

/**
 * Temperature below which a moist gas gives water.
 *
 * @returns K
 *
 * @example
 * dewPoint({ waterShare: 0.1694, pressure: 101_325 }) // value 329.9
 */
export function dewPoint({ waterShare, pressure }: MoistGas): Sizing {
  const why = firstImpossible(
    ['share of water vapor', waterShare, 'a share'],
    ['pressure of water vapor', waterShare * pressure, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const value = saturationTemperature(waterShare * pressure)
  return sized({
    value,
    working: [
      { name: 'share of water vapor', value: waterShare, unit: '1' },
      { name: 'pressure of water vapor', value: waterShare * pressure, unit: 'Pa' },
      { name: 'dew point', value, unit: 'K' },
    ],
    assumed: [],
    valid: value >= 273.16 && value <= 373.15,
  })
}

/**
 * Dew point of flue gas: burned without excess air methane gives 59 C, with the usual 10 to 25 % it is 55 to 57 C.
 *
 * @returns K
 *
 * @example
 * flueDewPoint({ fuel: fuelNamed('methane'), excessAir: 0.2, pressure: 101_325 }) // value 328.9
 */
export function flueDewPoint({ fuel, excessAir, pressure }: Flue): Sizing {
  const why = firstImpossible(['excess air', excessAir, 'zero or more'], ['air pressure', pressure, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const products = productsOf(fuel, excessAir)
  const dry = dryMoles(products)
  const gas = dewPoint({ waterShare: products.water / (dry + products.water), pressure })
  if (!gas.sized) return gas
  return sized({
    ...gas,
    working: [
      { name: 'water from a mole of gas', value: products.water, unit: 'mol' },
      { name: 'dry flue gas from a mole of gas', value: dry, unit: 'mol' },
      ...gas.working,
    ],
    assumed: ['dry combustion air: damp air raises the dew point by up to 1 K'],
  })
}

/**
 * Warmest return with which a boiler still condenses.
 *
 * @returns K
 *
 * @example
 * const flue = { fuel: fuelNamed('natural-gas'), excessAir: 0.2, pressure: 101_325 }
 * condensingReturn({ ...flue, approach: 5 }) // value 323.6, 50 C
 */
export function condensingReturn({ approach, ...flue }: CondensingBoiler): Sizing {
  const why = firstImpossible(['approach', approach, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const dew = flueDewPoint(flue)
  if (!dew.sized) return dew
  const value = dew.value - approach
  return sized({
    ...dew,
    value,
    working: [
      ...dew.working,
      { name: 'flue above the return', value: approach, unit: 'K' },
      { name: 'warmest return that condenses', value, unit: 'K' },
    ],
  })
}
