import type { Fuel } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { nitrogenWithOxygen, oxygenNeed, productsOf } from './products.js'

interface DryAnalysis {
  readonly fuel: Fuel
  /** Shares of the dry flue gas. */
  readonly carbonDioxide: number
  readonly carbonMonoxide: number
  readonly nitrogen: number
}

/**
 * Moles of air with which a mole of gas was burned, from the analysis of the dry flue gas: carbon tells the gas, nitrogen
 * the air.
 *
 * @returns mol of air for a mol of gas
 *
 * @example
 * const analysis = { carbonDioxide: 0.097, carbonMonoxide: 0.005, nitrogen: 0.8685 }
 * airFromAnalysis({ fuel: fuelNamed('methane'), ...analysis }) // value 10.78
 */
export function airFromAnalysis({ fuel, carbonDioxide, carbonMonoxide, nitrogen }: DryAnalysis): Sizing {
  const why = firstImpossible(
    ['share of carbon dioxide', carbonDioxide, 'a share'],
    ['share of carbon monoxide', carbonMonoxide, 'a share'],
    ['share of nitrogen', nitrogen, 'a share'],
    ['carbon in the flue gas', carbonDioxide + carbonMonoxide, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const gas = (carbonDioxide + carbonMonoxide) / productsOf(fuel, 0).carbonDioxide
  const air = ((nitrogen - gas * fuel.nitrogen) * (1 + nitrogenWithOxygen)) / nitrogenWithOxygen
  return sized({
    value: air / gas,
    working: [
      { name: 'gas for a mole of dry flue gas', value: gas, unit: 'mol' },
      { name: 'air for a mole of dry flue gas', value: air, unit: 'mol' },
      { name: 'air for a mole of gas', value: air / gas, unit: '1' },
    ],
    assumed: ['dry air with 3.76 mol of nitrogen for each of oxygen'],
    valid: carbonDioxide + carbonMonoxide + nitrogen <= 1 && air >= 0,
  })
}

/**
 * Moles of air that a mole of gas needs.
 *
 * @example
 * theoreticalAir(fuelNamed('methane')) // value 9.52
 */
export function theoreticalAir(fuel: Fuel): Sizing {
  const need = oxygenNeed(fuel)
  const value = need * (1 + nitrogenWithOxygen)
  return sized({
    value,
    working: [
      { name: 'oxygen that a mole of gas needs', value: need, unit: 'mol' },
      { name: 'air that a mole of gas needs', value, unit: '1' },
    ],
    assumed: ['dry air with 3.76 mol of nitrogen for each of oxygen'],
    valid: true,
  })
}
