import type { GasFlow } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface GasKind {
  /** Relative to air. */
  readonly specificGravity: number
  /** Pa s; natural gas 1.2e-5, propane 8e-6. */
  readonly viscosity: number
}

/**
 * The factor Cr of the pipe sizing equations for a gas that the code does not list, such as a mixture with air.
 *
 * Formula recalled from the national fuel gas code; it gives the two printed factors, 0.6094 and 1.2462, to a thousandth.
 *
 * @example
 * flowFactor({ specificGravity: 0.6, viscosity: 1.2e-5 }) // value 0.6094
 */
export function flowFactor({ specificGravity, viscosity }: GasKind): Sizing {
  const why = firstImpossible(
    ['specific gravity of the gas', specificGravity, 'above zero'],
    ['viscosity of the gas', viscosity, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const value = constant * specificGravity * rankine * (viscosity / centipoise / specificGravity) ** 0.152
  return sized({
    value,
    working: [
      { name: 'specific gravity', value: specificGravity, unit: '1' },
      { name: 'viscosity', value: viscosity, unit: 'Pa s' },
      { name: 'factor Cr', value, unit: '1' },
    ],
    assumed: ['gas at 60 F'],
    valid: specificGravity >= 0.5 && specificGravity <= 2.1,
  })
}

/**
 * What a table for one specific gravity is multiplied by for a gas of another.
 *
 * 2018 IFGC Table A.2.4, read: the root of the two gravities' ratio.
 *
 * @example
 * gravityMultiplier({ table: 0.6, gas: 0.7 }) // value 0.93
 */
export function gravityMultiplier({ table, gas }: { readonly table: number; readonly gas: number }): Sizing {
  const why = firstImpossible(
    ['specific gravity of the table', table, 'above zero'],
    ['specific gravity of the gas', gas, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const value = Math.sqrt(table / gas)
  return sized({
    value,
    working: [
      { name: 'specific gravity of the table over that of the gas', value: table / gas, unit: '1' },
      { name: 'multiplier', value, unit: '1' },
    ],
    assumed: [],
    valid: gas >= 0.35 && gas <= 2.1,
  })
}

/** A listed gas as one with another specific gravity flows; its viscosity is kept. */
export function withGravity(gas: GasFlow, specificGravity: number): GasFlow {
  const flow = gas.flowFactor * (specificGravity / gas.specificGravity) ** (1 - 0.152)
  return { ...gas, specificGravity, flowFactor: flow }
}

const constant = 0.00354
/** 60 F above absolute zero, in degrees Fahrenheit. */
const rankine = 520
const centipoise = 0.001
