import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { heatCapacityOfVolume } from './heat-capacity-of-volume.js'
import type { TankCoil } from './tank-coil.js'

interface CoilReheat extends TankCoil {
  /** K, boiler water into the coil, steady. */
  readonly entering: number
  /** W, most that the boiler gives. */
  readonly boilerOutput: number
  /** m3 */
  readonly volume: number
  /** K */
  readonly from: number
  /** K */
  readonly to: number
}

/**
 * Time in which a coil warms a tank: at first the boiler's output limits it, then the shrinking difference to the tank.
 *
 * @returns s
 *
 * @example
 * const coil = { conductance: 1155, flowCapacity: 1667, entering: 353.15, boilerOutput: 20_515 }
 * coilReheatTime({ ...coil, volume: 0.17, from: 283.15, to: 333.15 }) // value 1738, 29 min
 */
export function coilReheatTime(reheat: CoilReheat): Sizing {
  const { conductance, flowCapacity, entering, boilerOutput, volume, from, to } = reheat
  const why = firstImpossible(
    ['conductance of the coil', conductance, 'above zero'],
    ['capacity of the flow', flowCapacity, 'above zero'],
    ['output of the boiler', boilerOutput, 'above zero'],
    ['volume of the tank', volume, 'zero or more'],
    ['temperature at the start', from, 'above zero'],
    ['rise of the tank', to - from, 'zero or more'],
    ['water entering the coil', entering, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  if (to >= entering) return cannotSize(`A coil fed with ${entering} K never warms the tank to ${to} K.`)
  const effect = flowCapacity * (1 - Math.exp(-conductance / flowCapacity))
  const { value: each, valid } = heatCapacityOfVolume((from + to) / 2)
  const turning = Math.min(to, Math.max(from, entering - boilerOutput / effect))
  const byBoiler = (volume * each * (turning - from)) / boilerOutput
  const byCoil = ((volume * each) / effect) * Math.log((entering - turning) / (entering - to))
  return sized({
    value: byBoiler + byCoil,
    working: [
      { name: 'heat for a degree between boiler water and tank', value: effect, unit: 'W/K' },
      { name: 'tank above which the coil limits', value: turning, unit: 'K' },
      { name: 'time limited by the boiler', value: byBoiler, unit: 's' },
      { name: 'time limited by the coil', value: byCoil, unit: 's' },
      { name: 'time', value: byBoiler + byCoil, unit: 's' },
    ],
    assumed: ['a well mixed tank', 'no loss from the tank and no draw meanwhile'],
    valid,
  })
}
