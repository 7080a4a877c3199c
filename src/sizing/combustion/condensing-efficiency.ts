import type { Fuel } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { dryMoles, grossHeat, heatOfCondensing, type Products, productsOf } from './products.js'
import { saturationPressure } from '../saturation-pressure.js'

interface CoolFlue {
  readonly fuel: Fuel
  /** Share of air beyond what the gas needs, 0.25 for 25 %. */
  readonly excessAir: number
  /** K, of the flue gas as it leaves; saturated where it condenses. */
  readonly flueTemperature: number
  /** Pa, absolute: the pressure of the air outside. */
  readonly pressure: number
}

interface Boiler extends CoolFlue {
  /** Part of the gross heat that the jacket loses; 0 for the flue alone. */
  readonly jacketLoss: number
}

/**
 * Part of the water in the flue gas that has condensed when it leaves at a temperature.
 *
 * @returns 0 above the dew point, towards 1 in a cold flue
 *
 * @example
 * const flue = { fuel: fuelNamed('methane'), excessAir: 0.25, pressure: 101_325 }
 * condensedShare({ ...flue, flueTemperature: 313.15 }) // value 0.572
 */
export function condensedShare(flue: CoolFlue): Sizing {
  const why = whyImpossible(flue)
  if (why !== undefined) return cannotSize(why)
  const products = productsOf(flue.fuel, flue.excessAir)
  const vapor = vaporLeft(products, flue)
  const value = 1 - vapor / products.water
  return sized({
    value,
    working: [
      { name: 'water from a mole of gas', value: products.water, unit: 'mol' },
      { name: 'of it left as vapor', value: vapor, unit: 'mol' },
      { name: 'part that has condensed', value, unit: '1' },
    ],
    assumed: ['dry combustion air', 'flue gas saturated as it leaves'],
    valid: isWithin(flue),
  })
}

/**
 * Efficiency of burning on the gross heating value: what does not leave with the flue gas or through the jacket.
 *
 * @returns part of the gross heat
 *
 * @example
 * const flue = { fuel: fuelNamed('methane'), excessAir: 0.25, pressure: 101_325 }
 * condensingEfficiency({ ...flue, flueTemperature: 313.15, jacketLoss: 0 }) // value 0.952
 */
export function condensingEfficiency({ jacketLoss, ...flue }: Boiler): Sizing {
  const why = whyImpossible(flue) ?? firstImpossible(['jacket loss', jacketLoss, 'a share'])
  if (why !== undefined) return cannotSize(why)
  const products = productsOf(flue.fuel, flue.excessAir)
  const [vapor, heat, rise] = [vaporLeft(products, flue), grossHeat(flue.fuel), flue.flueTemperature - reference]
  const dryLoss = (dryCapacity(products) * rise) / heat
  const vaporLoss = (vapor * (capacity.water * rise + heatOfCondensing)) / heat
  const value = 1 - dryLoss - vaporLoss - jacketLoss
  return sized({
    value,
    working: [
      { name: 'flue above 25 C', value: rise, unit: 'K' },
      { name: 'loss with the dry flue gas', value: dryLoss, unit: '1' },
      { name: 'loss with the vapor', value: vaporLoss, unit: '1' },
      { name: 'loss of the jacket', value: jacketLoss, unit: '1' },
      { name: 'efficiency on the gross heating value', value, unit: '1' },
    ],
    assumed: ['gas and air arrive at 25 C', 'dry combustion air', 'flue gas saturated as it leaves'],
    valid: isWithin(flue),
  })
}

function whyImpossible({ excessAir, flueTemperature, pressure }: CoolFlue): string | undefined {
  return firstImpossible(
    ['excess air', excessAir, 'zero or more'],
    ['flue temperature', flueTemperature, 'above zero'],
    ['air pressure', pressure, 'above zero'],
  )
}

/** mol that the dry flue gas can hold, at most all there is. */
function vaporLeft(products: Products, { flueTemperature, pressure }: CoolFlue): number {
  const saturated = flueTemperature < critical ? saturationPressure(flueTemperature) : Infinity
  if (saturated >= pressure) return products.water
  return Math.min(products.water, (dryMoles(products) * saturated) / (pressure - saturated))
}

function dryCapacity({ carbonDioxide, nitrogen, oxygen }: Products): number {
  return carbonDioxide * capacity.carbonDioxide + nitrogen * capacity.nitrogen + oxygen * capacity.oxygen
}

function isWithin({ flueTemperature }: CoolFlue): boolean {
  return flueTemperature >= 273.16 && flueTemperature <= 473.15
}

/** J/mol K, between 25 C and flue temperatures of boilers. */
const capacity = { carbonDioxide: 37.7, nitrogen: 29.13, oxygen: 29.45, water: 33.7 } as const
/** K */
const reference = 298.15
/** K, above which water has no saturation. */
const critical = 647.096
