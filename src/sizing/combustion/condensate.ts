import type { Fuel } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { grossHeat, molarMass, productsOf } from './products.js'

interface Burned {
  readonly fuel: Fuel
  /** J of gas burned, by the gross heating value. */
  readonly heat: number
  /** Part of the water that condenses; 1 gives the most there can be. */
  readonly condensedShare: number
}

interface BurningRate {
  readonly fuel: Fuel
  /** W of heat input, by the gross heating value. */
  readonly heatInput: number
  /** Part of the water that condenses; 1 gives the most there can be. */
  readonly condensedShare: number
}

/**
 * Condensate from gas that was burned, such as in a year.
 *
 * @returns kg, nearly the liters
 *
 * @example
 * condensate({ fuel: fuelNamed('natural-gas'), heat: 3.6e6, condensedShare: 1 }) // value 0.1439, for a kWh
 */
export function condensate({ fuel, heat, condensedShare }: Burned): Sizing {
  return condensed(fuel, ['heat burned', heat, 'J'], condensedShare, 'kg')
}

/**
 * Condensate while a boiler burns.
 *
 * @returns kg/s
 *
 * @example
 * condensateRate({ fuel: fuelNamed('methane'), heatInput: 29307, condensedShare: 1 }) // value 0.001186, 1.13 gal/h
 */
export function condensateRate({ fuel, heatInput, condensedShare }: BurningRate): Sizing {
  return condensed(fuel, ['heat input', heatInput, 'W'], condensedShare, 'kg/s')
}

type Amount = readonly [name: string, value: number, unit: string]

function condensed(fuel: Fuel, [name, heat, unit]: Amount, share: number, resultUnit: string): Sizing {
  const why = firstImpossible([name, heat, 'zero or more'], ['part of the water that condenses', share, 'a share'])
  if (why !== undefined) return cannotSize(why)
  const water = (productsOf(fuel, 0).water * molarMass.water) / grossHeat(fuel)
  const value = water * heat * share
  return sized({
    value,
    working: [
      { name: 'water from the gas for each joule', value: water, unit: 'kg/J' },
      { name, value: heat, unit },
      { name: 'part that condenses', value: share, unit: '1' },
      { name: 'condensate', value, unit: resultUnit },
    ],
    assumed: ['dry combustion air'],
    valid: true,
  })
}
