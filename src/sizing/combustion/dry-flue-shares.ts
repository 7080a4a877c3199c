import type { Fuel } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { dryMoles, type Products, productsOf } from './products.js'

interface Burning {
  readonly fuel: Fuel
  /** Share of air beyond what the gas needs, 0.2 for 20 %. */
  readonly excessAir: number
}

/**
 * Share of carbon dioxide in the dry flue gas, by stoichiometry.
 *
 * @returns 0 to 1
 *
 * @example
 * carbonDioxideInFlue({ fuel: fuelNamed('methane'), excessAir: 0.2 }) // value 0.0959
 */
export function carbonDioxideInFlue(burning: Burning): Sizing {
  return shareOf('carbon dioxide', burning, ({ carbonDioxide }) => carbonDioxide)
}

/**
 * Share of oxygen in the dry flue gas, by stoichiometry.
 *
 * @returns 0 to 1
 *
 * @example
 * oxygenInFlue({ fuel: fuelNamed('methane'), excessAir: 0.2 }) // value 0.0384
 */
export function oxygenInFlue(burning: Burning): Sizing {
  return shareOf('oxygen', burning, ({ oxygen }) => oxygen)
}

function shareOf(part: string, { fuel, excessAir }: Burning, molesOf: (products: Products) => number): Sizing {
  const why = firstImpossible(['excess air', excessAir, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const products = productsOf(fuel, excessAir)
  const [moles, dry] = [molesOf(products), dryMoles(products)]
  return sized({
    value: moles / dry,
    working: [
      { name: `${part} from a mole of gas`, value: moles, unit: 'mol' },
      { name: 'dry flue gas from a mole of gas', value: dry, unit: 'mol' },
      { name: `${part} in the dry flue gas`, value: moles / dry, unit: '1' },
    ],
    assumed: ['complete burning in dry air with 3.76 mol of nitrogen for each of oxygen'],
    valid: true,
  })
}
