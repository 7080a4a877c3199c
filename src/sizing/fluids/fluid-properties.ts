import { glycolMassFraction } from '../glycol-mass-fraction.js'
import type { Sized } from '../sized.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { waterDensity } from '../water-density.js'
import { waterHeatCapacity } from '../water-heat-capacity.js'
import { type FluidState, type GlycolInWater, impossibleFluid } from './heating-fluid.js'
import { inMelinderRange, melinder, type MelinderProperty } from './melinder.js'
import { waterConductivity } from './water-conductivity.js'
import { waterViscosity } from './water-viscosity.js'

/**
 * Density of what fills a system: water by IAPWS SR6-08, glycol in water by Melinder 2010.
 *
 * Handbook tables of inhibited glycols are up to 0.65 % heavier.
 *
 * @returns kg/m3
 *
 * @example
 * fluidDensity({ fluid: 'water', temperature: 333.15 }) // value 983.2
 */
export function fluidDensity(state: FluidState): Sizing {
  return propertyOf(state, waterDensity, { property: 'density', name: 'density', unit: 'kg/m3' })
}

/**
 * Heat that warms a kilogram of what fills a system by a degree: water by IAPWS SR6-08, glycol in water by Melinder 2010.
 *
 * @returns J/kg K
 *
 * @example
 * fluidHeatCapacity({ fluid: { glycol: 'propylene-glycol', volumeFraction: 0.3 }, temperature: 333.15 }) // value 3956
 */
export function fluidHeatCapacity(state: FluidState): Sizing {
  return propertyOf(state, waterHeatCapacity, { property: 'heatCapacity', name: 'heat capacity', unit: 'J/kg K' })
}

/**
 * Dynamic viscosity of what fills a system: water by IAPWS SR6-08, glycol in water by Melinder 2010; published tables of
 * glycol differ by about 10 %.
 *
 * @returns Pa s
 *
 * @example
 * fluidViscosity({ fluid: { glycol: 'propylene-glycol', volumeFraction: 0.3 }, temperature: 333.15 }) // value 0.00101
 */
export function fluidViscosity(state: FluidState): Sizing {
  return propertyOf(state, waterViscosity, { property: 'logViscosity', name: 'viscosity', unit: 'Pa s' })
}

/**
 * Thermal conductivity of what fills a system: water by IAPWS SR6-08, glycol in water by Melinder 2010.
 *
 * @returns W/m K
 *
 * @example
 * fluidConductivity({ fluid: 'water', temperature: 333.15 }) // value 0.651
 */
export function fluidConductivity(state: FluidState): Sizing {
  return propertyOf(state, waterConductivity, { property: 'conductivity', name: 'conductivity', unit: 'W/m K' })
}

interface Asked {
  readonly property: MelinderProperty
  readonly name: string
  readonly unit: string
}

function propertyOf(state: FluidState, ofWater: (temperature: number) => Sized, asked: Asked): Sizing {
  const why = impossibleFluid(state)
  if (why !== undefined) return cannotSize(why)
  const { fluid, temperature } = state
  const result = fluid === 'water' ? ofWater(temperature) : ofMixture(fluid, temperature, asked)
  // Far outside its range a polynomial can tell anything.
  if (Number.isFinite(result.value) && result.value > 0) return sized(result)
  return cannotSize(`No ${asked.name} of the fluid is known at ${temperature} K.`)
}

function ofMixture({ glycol, volumeFraction }: GlycolInWater, temperature: number, asked: Asked): Sized {
  const mass = glycolMassFraction(glycol, volumeFraction)
  const told = melinder(asked.property, glycol, mass.value, temperature)
  const value = asked.property === 'logViscosity' ? Math.exp(told) : told
  return {
    value,
    working: [
      ...mass.working,
      { name: 'temperature', value: temperature, unit: 'K' },
      { name: `${asked.name} of ${glycol} in water`, value, unit: asked.unit },
    ],
    assumed: [...mass.assumed, 'glycol without inhibitors'],
    valid: mass.valid && inMelinderRange(glycol, mass.value, temperature),
  }
}
