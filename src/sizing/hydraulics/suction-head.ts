import { firstImpossible } from '../first-impossible.js'
import { standardGravity } from '../friction/head.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface Suction {
  /** Pa absolute, on the fluid where the way to the pump begins. */
  readonly pressure: number
  /** Pa absolute, at which the fluid boils; {@link vaporPressure} gives it for water. */
  readonly vaporPressure: number
  /** kg/m3 */
  readonly density: number
  /** m by which the pump stands higher; negative where it stands lower. */
  readonly lift: number
  /** m lost on the way. */
  readonly loss: number
}

/**
 * Net positive suction head that a pump has: how far the fluid at its inlet is from boiling.
 *
 * @returns m of the fluid
 *
 * @example
 * availableSuctionHead({ pressure: 135_800, vaporPressure: 1765, density: 999, lift: 7.62, loss: 1.829 }) // value 4.23
 */
export function availableSuctionHead({ pressure, vaporPressure, density, lift, loss }: Suction): Sizing {
  const why = firstImpossible(
    ['absolute pressure', pressure, 'zero or more'],
    ['vapor pressure', vaporPressure, 'zero or more'],
    ['density', density, 'above zero'],
    ['lift', lift, 'any'],
    ['loss', loss, 'zero or more'],
  )
  if (why !== undefined) return cannotSize(why)
  const above = (pressure - vaporPressure) / (density * standardGravity)
  const value = above - lift - loss
  return sized({
    value,
    working: [
      { name: 'head above boiling', value: above, unit: 'm', readAs: 'head' },
      { name: 'lift', value: lift, unit: 'm', readAs: 'head' },
      { name: 'loss', value: loss, unit: 'm', readAs: 'head' },
      { name: 'available suction head', value, unit: 'm', readAs: 'head' },
    ],
    assumed: ['standard gravity, 9.80665 m/s2'],
    valid: true,
  })
}
