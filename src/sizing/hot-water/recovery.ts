import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { heatCapacityOfVolume } from './heat-capacity-of-volume.js'

/** Water that is warmed from cold to hot; K. */
export interface Warming {
  readonly cold: number
  readonly hot: number
}

interface Source extends Warming {
  /** W that reach the water: the least of boiler output, coil and flow. */
  readonly heatRate: number
}

interface Reheat {
  /** m3 */
  readonly volume: number
  /** K */
  readonly from: number
  /** K */
  readonly to: number
  /** W that reach the water. */
  readonly heatRate: number
}

/**
 * Flow of water that a source warms without end.
 *
 * @returns m3/s, at the mean of the two temperatures
 *
 * @example
 * recovery({ heatRate: 20515, cold: 280.37, hot: 322.04 }) // value 0.0001182, 112 gal/h
 */
export function recovery({ heatRate, cold, hot }: Source): Sizing {
  const why = firstImpossible(['heat rate', heatRate, 'zero or more'], ['cold water', cold, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  if (!(hot > cold)) return cannotSize(`Water at ${hot} K is no warmer than the cold water at ${cold} K.`)
  const { value: each, valid } = heatCapacityOfVolume((cold + hot) / 2)
  const value = heatRate / (each * (hot - cold))
  return sized({
    value,
    working: [
      { name: 'heat rate', value: heatRate, unit: 'W' },
      { name: 'heat for a cubic meter and degree', value: each, unit: 'J/m3 K' },
      { name: 'rise', value: hot - cold, unit: 'K' },
      { name: 'recovery', value, unit: 'm3/s' },
    ],
    assumed: ['properties of water at the mean temperature'],
    valid,
  })
}

/**
 * Time in which a source of steady output warms a tank.
 *
 * @returns s
 *
 * @example
 * reheatTime({ volume: 0.1703, from: 280.37, to: 322.04, heatRate: 20515 }) // value 1441, 24 min
 */
export function reheatTime({ volume, from, to, heatRate }: Reheat): Sizing {
  const why = firstImpossible(
    ['volume of the tank', volume, 'zero or more'],
    ['temperature at the start', from, 'above zero'],
    ['temperature at the end', to, 'above zero'],
    ['heat rate', heatRate, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const { value: each, valid } = heatCapacityOfVolume((from + to) / 2)
  const heat = volume * each * Math.max(0, to - from)
  return sized({
    value: heat / heatRate,
    working: [
      { name: 'heat for the tank', value: heat, unit: 'J' },
      { name: 'heat rate', value: heatRate, unit: 'W' },
      { name: 'time', value: heat / heatRate, unit: 's' },
    ],
    assumed: ['no loss from the tank and no draw meanwhile'],
    valid,
  })
}
