import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import type { HeatingFluid } from '../fluids/heating-fluid.js'
import { fluidExpansion } from './fluid-expansion.js'
import { tankAcceptance, type FittedTank } from './tank-acceptance.js'

interface HeatedSystem {
  /** m3 */
  readonly systemVolume: number
  readonly fluid: HeatingFluid
  /** K, as it is filled in. */
  readonly cold: number
  /** The tank up to the pressure asked about, commonly the setting of the relief valve. */
  readonly tank: FittedTank
}

/**
 * Mean temperature at which a system reaches the highest pressure of its tank: with the setting of the relief valve as that
 * pressure, the temperature at which the valve lifts.
 *
 * @returns K; the bound of 373.15 K, not valid, where it is not reached below
 *
 * @example
 * // 119.2 gal of 35 % propylene glycol on 4.4 gal from 12 psi: value 311, about 100 F
 * liftTemperature({ systemVolume: 0.4512, fluid: { glycol: 'propylene-glycol', volumeFraction: 0.35 }, cold: 283.15, tank })
 */
export function liftTemperature({ systemVolume, fluid, cold, tank }: HeatedSystem): Sizing {
  const acceptance = tankAcceptance(tank)
  if (!acceptance.sized) return acceptance
  const why = firstImpossible(['content of the system', systemVolume, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const atBoiling = fluidExpansion({ fluid, cold, hot: boiling })
  if (!atBoiling.sized) return atBoiling
  const share = acceptance.value / systemVolume
  const reached = atBoiling.value >= share
  const value = reached ? temperatureOf(share, { fluid, cold }) : boiling
  return sized({
    value,
    working: [
      ...acceptance.working,
      { name: 'swelling that the tank takes up', value: share, unit: '1' },
      { name: reached ? 'temperature at that swelling' : 'not reached up to', value, unit: 'K' },
    ],
    assumed: [...acceptance.assumed, ...atBoiling.assumed],
    valid: reached && atBoiling.valid,
  })
}

/** The published densities end here; K. */
const boiling = 373.15

function temperatureOf(share: number, { fluid, cold }: { fluid: HeatingFluid; cold: number }): number {
  const bounds = { low: cold, high: boiling }
  for (let step = 0; step < 60; step++) {
    const middle = (bounds.low + bounds.high) / 2
    const swelling = fluidExpansion({ fluid, cold, hot: middle })
    bounds[swelling.sized && swelling.value >= share ? 'high' : 'low'] = middle
  }
  return bounds.high
}
