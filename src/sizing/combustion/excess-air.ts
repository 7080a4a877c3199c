import type { Fuel } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { dryMoles, nitrogenWithOxygen, oxygenNeed, productsOf } from './products.js'

interface OxygenReading {
  readonly fuel: Fuel
  /** Share in the dry flue gas, from 0 to below 0.21. */
  readonly oxygen: number
}

/**
 * Excess air that leaves a share of oxygen in the dry flue gas.
 *
 * @returns share of air beyond what the gas needs, 0.2 for 20 %
 *
 * @example
 * excessAir({ fuel: fuelNamed('methane'), oxygen: 0.0384 }) // value 0.2
 */
export function excessAir({ fuel, oxygen }: OxygenReading): Sizing {
  const why = firstImpossible(['share of oxygen', oxygen, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const inAir = 1 / (1 + nitrogenWithOxygen)
  if (oxygen >= inAir) return cannotSize(`A sample with ${oxygen * 100} % of oxygen is plain air, not flue gas.`)
  const [need, dry] = [oxygenNeed(fuel), dryMoles(productsOf(fuel, 0))]
  const value = (oxygen * dry) / (need * (1 - oxygen / inAir))
  return sized({
    value,
    working: [
      { name: 'oxygen that a mole of gas needs', value: need, unit: 'mol' },
      { name: 'dry flue gas from a mole of gas without excess air', value: dry, unit: 'mol' },
      { name: 'oxygen in the dry flue gas', value: oxygen, unit: '1' },
      { name: 'excess air', value, unit: '1' },
    ],
    assumed: ['complete burning in dry air with 3.76 mol of nitrogen for each of oxygen'],
    valid: true,
  })
}
