import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { tankAcceptance, type FittedTank } from './tank-acceptance.js'

interface TankOnSystem {
  readonly tank: FittedTank
  /** Share of its cold volume by which the fluid swells. */
  readonly swelling: number
}

/**
 * Largest system for which a tank is enough: "4.4 gal is enough below 50 gal of system water".
 *
 * @returns m3 of system content
 *
 * @example
 * enoughFor({ tank, swelling: 0.0266 }) // acceptance of the tank over 0.0266
 */
export function enoughFor({ tank, swelling }: TankOnSystem): Sizing {
  const acceptance = tankAcceptance(tank)
  if (!acceptance.sized) return acceptance
  const why = firstImpossible(['swelling of the fluid', swelling, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const value = acceptance.value / swelling
  return sized({
    value,
    working: [
      ...acceptance.working,
      { name: 'swelling of the fluid', value: swelling, unit: '1' },
      { name: 'enough for a system of', value, unit: 'm3' },
    ],
    assumed: acceptance.assumed,
    valid: acceptance.valid,
  })
}
