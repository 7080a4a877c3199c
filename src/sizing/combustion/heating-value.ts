import type { Fuel } from '../../tables/index.js'
import { sized, type Sizing } from '../sizing.js'
import { grossHeat, molarMassOf, netHeat } from './products.js'

/**
 * Gross heating value, with the water of the flue gas condensed, at 25 C.
 *
 * @returns J/kg
 *
 * @example
 * grossHeatingValue(fuelNamed('methane')) // value 55.51e6
 */
export function grossHeatingValue(fuel: Fuel): Sizing {
  return heatingValue('gross', fuel, grossHeat(fuel))
}

/**
 * Net heating value, with the water of the flue gas left as vapor, at 25 C.
 *
 * @returns J/kg
 *
 * @example
 * netHeatingValue(fuelNamed('methane')) // value 50.03e6
 */
export function netHeatingValue(fuel: Fuel): Sizing {
  return heatingValue('net', fuel, netHeat(fuel))
}

/**
 * Gross over net heating value: a figure on the net value is divided by it before it is set beside one on the gross value.
 *
 * @example
 * grossOverNet(fuelNamed('natural-gas')) // value 1.108
 */
export function grossOverNet(fuel: Fuel): Sizing {
  const [gross, net] = [grossHeat(fuel), netHeat(fuel)]
  return sized({
    value: gross / net,
    working: [
      { name: 'gross heat of a mole of gas', value: gross, unit: 'J' },
      { name: 'net heat of a mole of gas', value: net, unit: 'J' },
      { name: 'gross over net heating value', value: gross / net, unit: '1' },
    ],
    assumed: ['heats at 25 C'],
    valid: true,
  })
}

function heatingValue(kind: string, fuel: Fuel, heat: number): Sizing {
  const mass = molarMassOf(fuel)
  return sized({
    value: heat / mass,
    working: [
      { name: `${kind} heat of a mole of gas`, value: heat, unit: 'J' },
      { name: 'mass of a mole of gas', value: mass, unit: 'kg' },
      { name: `${kind} heating value`, value: heat / mass, unit: 'J/kg' },
    ],
    assumed: ['heats at 25 C'],
    valid: true,
  })
}
