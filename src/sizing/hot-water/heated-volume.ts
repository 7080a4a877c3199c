import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface Heated {
  /** J */
  readonly heat: number
  /** K */
  readonly rise: number
  /** J/m3 K, as {@link heatCapacityOfVolume} gives it. */
  readonly heatCapacity: number
}

/**
 * Volume of water that an amount of heat warms.
 *
 * @returns m3
 *
 * @example
 * heatedVolume({ heat: 5.04e6, rise: 30, heatCapacity: 4.18e6 }) // value 0.0402
 */
export function heatedVolume({ heat, rise, heatCapacity }: Heated): Sizing {
  const why = firstImpossible(
    ['heat', heat, 'zero or more'],
    ['rise', rise, 'above zero'],
    ['heat capacity of a volume', heatCapacity, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const value = heat / (rise * heatCapacity)
  return sized({
    value,
    working: [
      { name: 'heat', value: heat, unit: 'J' },
      { name: 'rise', value: rise, unit: 'K' },
      { name: 'heat for a cubic meter and degree', value: heatCapacity, unit: 'J/m3 K' },
      { name: 'volume', value, unit: 'm3' },
    ],
    assumed: [],
    valid: true,
  })
}
