import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface HeatedFlow {
  /** W that the boiler gives in this state: the load, as the burner follows it. */
  readonly heat: number
  /** m3/s */
  readonly flow: number
  /** J/m3 K, of the water or mixture. */
  readonly heatCapacity: number
}

/**
 * Rise of the water through a boiler.
 *
 * @returns K
 *
 * @example
 * // 78,000 Btu/h at 3 gpm: 52 F
 * boilerRise({ heat: 22860, flow: 1.8927e-4, heatCapacity: 4.13e6 }) // value 29.2
 */
export function boilerRise({ heat, flow, heatCapacity }: HeatedFlow): Sizing {
  const why = firstImpossible(
    ['heat of the boiler', heat, 'zero or more'],
    ['flow through the boiler', flow, 'above zero'],
    ['heat capacity of the water', heatCapacity, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const value = heat / (flow * heatCapacity)
  return sized({
    value,
    working: [
      { name: 'heat', value: heat, unit: 'W' },
      { name: 'heat of the flow for a degree', value: flow * heatCapacity, unit: 'W/K' },
      { name: 'rise', value, unit: 'K' },
    ],
    assumed: [],
    valid: true,
  })
}

interface LimitedRise {
  /** W */
  readonly heat: number
  /** K, most that the maker allows, or wanted. */
  readonly rise: number
  /** J/m3 K, of the water or mixture. */
  readonly heatCapacity: number
}

/**
 * Flow at which a heat raises the water just so far.
 *
 * @returns m3/s
 *
 * @example
 * boilerFlow({ heat: 22860, rise: 22.22, heatCapacity: 4.13e6 }) // value 2.491e-4, or 3.95 gpm
 */
export function boilerFlow({ heat, rise, heatCapacity }: LimitedRise): Sizing {
  const why = firstImpossible(
    ['heat of the boiler', heat, 'zero or more'],
    ['rise of the water', rise, 'above zero'],
    ['heat capacity of the water', heatCapacity, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const value = heat / (rise * heatCapacity)
  return sized({
    value,
    working: [
      { name: 'heat', value: heat, unit: 'W' },
      { name: 'heat of a cubic meter', value: rise * heatCapacity, unit: 'J/m3' },
      { name: 'flow', value, unit: 'm3/s' },
    ],
    assumed: [],
    valid: true,
  })
}
