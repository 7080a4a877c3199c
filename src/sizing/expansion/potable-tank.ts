import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { fluidExpansion } from './fluid-expansion.js'
import { diaphragmTank } from './tank-volume.js'

interface StoredWater {
  /** m3 of drinking water that is heated behind the check valve. */
  readonly stored: number
  /** K, of the coldest water that comes in. */
  readonly cold: number
  /** K, of the stored water. */
  readonly hot: number
  /** Pa, gauge, of the street; the air charge of the tank is the same. */
  readonly supply: number
  /** Pa, gauge, that the house bears; 100 psi is common practice. */
  readonly highest: number
  /** Pa, absolute. */
  readonly atmosphere: number
}

/**
 * Expansion tank for stored drinking water whose way back to the street is shut by a check valve.
 *
 * @returns m3, of the whole tank
 *
 * @example
 * // 45 gal from 45 F to 140 F, 68 psi to 100 psi: value 0.01038, or 2.74 gal
 * potableTank({ stored: 0.17034, cold: 280.37, hot: 333.15, supply: 468843, highest: 689476, atmosphere: 101353 })
 */
export function potableTank({ stored, cold, hot, supply, highest, atmosphere }: StoredWater): Sizing {
  const why = firstImpossible(['stored water', stored, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const swelling = fluidExpansion({ fluid: 'water', cold, hot })
  if (!swelling.sized) return swelling
  const expansion = stored * Math.max(0, swelling.value)
  const tank = diaphragmTank({ expansion, fill: supply, highest, atmosphere })
  if (!tank.sized) return tank
  return sized({
    value: tank.value,
    working: [...swelling.working, { name: 'stored water', value: stored, unit: 'm3' }, ...tank.working],
    assumed: [...swelling.assumed, ...tank.assumed],
    valid: swelling.valid,
  })
}
