import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface TwoDuties {
  /** W on the coldest day. */
  readonly heating: number
  /** W while hot water is made. */
  readonly hotWater: number
  /** Whether heating waits while hot water is made. */
  readonly priority: boolean
}

/**
 * Most that a boiler has to give at once: with priority the larger of the two, without it both.
 *
 * @returns W
 *
 * @example
 * concurrentLoad({ heating: 12558, hotWater: 20515, priority: true }) // value 20515
 */
export function concurrentLoad({ heating, hotWater, priority }: TwoDuties): Sizing {
  const why = firstImpossible(['heating load', heating, 'zero or more'], ['hot-water load', hotWater, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const value = priority ? Math.max(heating, hotWater) : heating + hotWater
  return sized({
    value,
    working: [
      { name: 'heating', value: heating, unit: 'W' },
      { name: 'hot water', value: hotWater, unit: 'W' },
      { name: priority ? 'the larger' : 'together', value, unit: 'W' },
    ],
    assumed: [priority ? 'heating waits while hot water is made' : 'no heating waits'],
    valid: true,
  })
}

interface WaitingHouse {
  /** s without heat: the limit of the priority. */
  readonly interruption: number
  /** J/K of the house: what its walls and floors hold. */
  readonly heatCapacity: number
  /** W/K */
  readonly conductance: number
  /** K */
  readonly indoor: number
  /** K */
  readonly outdoor: number
}

/**
 * How far rooms cool while they wait for hot water.
 *
 * @returns K
 *
 * @example
 * // 45 min at 5 F outdoors in a house that cools with a time constant of 30 h
 * coolDown({ interruption: 2700, heatCapacity: 37.6e6, conductance: 348, indoor: 294.26, outdoor: 258.15 }) // value 0.89
 */
export function coolDown({ interruption, heatCapacity, conductance, indoor, outdoor }: WaitingHouse): Sizing {
  const why = firstImpossible(
    ['time without heat', interruption, 'zero or more'],
    ['heat capacity of the house', heatCapacity, 'above zero'],
    ['conductance of the house', conductance, 'above zero'],
    ['indoor temperature', indoor, 'above zero'],
    ['outdoor temperature', outdoor, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const constant = heatCapacity / conductance
  const value = Math.max(0, indoor - outdoor) * -Math.expm1(-interruption / constant)
  return sized({
    value,
    working: [
      { name: 'time constant of the house', value: constant, unit: 's' },
      { name: 'indoors above outdoors', value: indoor - outdoor, unit: 'K' },
      { name: 'cooling of the rooms', value, unit: 'K' },
    ],
    assumed: ['one temperature in the whole house', 'nothing from the emitters after the start'],
    valid: true,
  })
}
