import type { Fuel } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import {
  dryMoles,
  grossHeat,
  molarMass,
  nitrogenWithOxygen,
  oxygenNeed,
  type Products,
  productsOf,
} from './products.js'

interface WarmFlue {
  readonly fuel: Fuel
  /** Share of air beyond what the gas needs, 0.25 for 25 %. */
  readonly excessAir: number
  /** K, of the gas or air in the pipe. */
  readonly temperature: number
  /** Pa, absolute: the pressure of the air outside. */
  readonly pressure: number
}

interface Burner extends WarmFlue {
  /** W, by the gross heating value. */
  readonly heatInput: number
}

/**
 * Flow of flue gas with all its water as vapor.
 *
 * @returns m3/s
 *
 * @example
 * const flue = { fuel: fuelNamed('methane'), excessAir: 0.25, temperature: 333.15, pressure: 101_325 }
 * flueGasFlow({ ...flue, heatInput: 30_000 }) // value 0.01188
 */
export function flueGasFlow(burner: Burner): Sizing {
  return flow('flue gas', burner, (products) => dryMoles(products) + products.water, 'nothing has condensed')
}

/**
 * Flow of the air that a burner takes in.
 *
 * @returns m3/s
 *
 * @example
 * const intake = { fuel: fuelNamed('methane'), excessAir: 0.25, temperature: 263.15, pressure: 101_325 }
 * combustionAirFlow({ ...intake, heatInput: 30_000 }) // value 0.00866
 */
export function combustionAirFlow(burner: Burner): Sizing {
  const moles = oxygenNeed(burner.fuel) * (1 + nitrogenWithOxygen) * (1 + burner.excessAir)
  return flow('air', burner, () => moles, 'dry air')
}

/**
 * Density of flue gas with all its water as vapor.
 *
 * @returns kg/m3
 *
 * @example
 * flueGasDensity({ fuel: fuelNamed('methane'), excessAir: 0.25, temperature: 333.15, pressure: 101_325 }) // value 1.019
 */
export function flueGasDensity({ fuel, excessAir, temperature, pressure }: WarmFlue): Sizing {
  const why = whyImpossible({ fuel, excessAir, temperature, pressure })
  if (why !== undefined) return cannotSize(why)
  const products = productsOf(fuel, excessAir)
  const mass = massOf(products) / (dryMoles(products) + products.water)
  const value = (mass * pressure) / (gasConstant * temperature)
  return sized({
    value,
    working: [
      { name: 'mass of a mole of flue gas', value: mass, unit: 'kg/mol' },
      { name: 'density of the flue gas', value, unit: 'kg/m3' },
    ],
    assumed: ['nothing has condensed', 'dry combustion air'],
    valid: true,
  })
}

function flow(name: string, burner: Burner, molesOf: (products: Products) => number, assumed: string): Sizing {
  const why = whyImpossible(burner) ?? firstImpossible(['heat input', burner.heatInput, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const gas = burner.heatInput / grossHeat(burner.fuel)
  const moles = gas * molesOf(productsOf(burner.fuel, burner.excessAir))
  const value = (moles * gasConstant * burner.temperature) / burner.pressure
  return sized({
    value,
    working: [
      { name: 'gas burned', value: gas, unit: 'mol/s' },
      { name, value: moles, unit: 'mol/s' },
      { name: `flow of ${name}`, value, unit: 'm3/s' },
    ],
    assumed: [assumed],
    valid: true,
  })
}

function whyImpossible({ excessAir, temperature, pressure }: WarmFlue): string | undefined {
  return firstImpossible(
    ['excess air', excessAir, 'zero or more'],
    ['temperature in the pipe', temperature, 'above zero'],
    ['air pressure', pressure, 'above zero'],
  )
}

function massOf({ carbonDioxide, oxygen, nitrogen, water }: Products): number {
  const heavy = carbonDioxide * molarMass.carbonDioxide + water * molarMass.water
  return heavy + oxygen * molarMass.oxygen + nitrogen * molarMass.nitrogen
}

/** J/mol K */
const gasConstant = 8.31446
