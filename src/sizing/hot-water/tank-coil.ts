import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface RatedCoil {
  /** W */
  readonly heatRate: number
  /** K, boiler water into the coil. */
  readonly entering: number
  /** K, boiler water out of the coil. */
  readonly leaving: number
  /** K, tank. */
  readonly tank: number
}

/** A coil in a tank that is well mixed. */
export interface TankCoil {
  /** W/K, as {@link coilConductance} gives it; it falls with scale. */
  readonly conductance: number
  /** W/K that the flow through the coil carries: mass flow times heat capacity. */
  readonly flowCapacity: number
}

interface CoilAtWork extends TankCoil {
  /** K, boiler water into the coil. */
  readonly entering: number
  /** K */
  readonly tank: number
}

interface OtherFlow {
  /** W/K at the rated flow. */
  readonly conductance: number
  /** Flow over rated flow. */
  readonly flowRatio: number
  /** Common practice 0.5 to 0.8. */
  readonly exponent: number
}

/**
 * Conductance of a coil from its rating: heat over the logarithmic mean difference to the tank.
 *
 * @returns W/K
 *
 * @example
 * coilConductance({ heatRate: 25_000, entering: 353.15, leaving: 338.15, tank: 323.15 }) // value 1155
 */
export function coilConductance({ heatRate, entering, leaving, tank }: RatedCoil): Sizing {
  const why = firstImpossible(
    ['heat rate of the coil', heatRate, 'zero or more'],
    ['temperature of the tank', tank, 'above zero'],
    ['water leaving the coil above the tank', leaving - tank, 'above zero'],
    ['water entering the coil above the water leaving', entering - leaving, 'zero or more'],
  )
  if (why !== undefined) return cannotSize(why)
  const [warm, cool] = [entering - tank, leaving - tank]
  const mean = warm === cool ? warm : (warm - cool) / Math.log(warm / cool)
  return sized({
    value: heatRate / mean,
    working: [
      { name: 'heat rate', value: heatRate, unit: 'W' },
      { name: 'logarithmic mean difference', value: mean, unit: 'K' },
      { name: 'conductance of the coil', value: heatRate / mean, unit: 'W/K' },
    ],
    assumed: ['a well mixed tank'],
    valid: true,
  })
}

/**
 * Conductance of a coil at another flow than the one it is rated for.
 *
 * @returns W/K
 *
 * @example
 * coilConductanceAtFlow({ conductance: 1000, flowRatio: 0.5, exponent: 0.5 }) // value 707
 */
export function coilConductanceAtFlow({ conductance, flowRatio, exponent }: OtherFlow): Sizing {
  const why = firstImpossible(
    ['conductance of the coil', conductance, 'zero or more'],
    ['flow over rated flow', flowRatio, 'zero or more'],
    ['exponent', exponent, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const factor = flowRatio ** exponent
  return sized({
    value: conductance * factor,
    working: [
      { name: 'conductance at the rated flow', value: conductance, unit: 'W/K' },
      { name: 'factor for the flow', value: factor, unit: '1' },
      { name: 'conductance of the coil', value: conductance * factor, unit: 'W/K' },
    ],
    assumed: [],
    valid: exponent >= 0.5 && exponent <= 0.8,
  })
}

/**
 * Heat that a coil gives a well mixed tank.
 *
 * @returns W; 0 where the boiler water is no warmer than the tank
 *
 * @example
 * coilHeatRate({ conductance: 1155, flowCapacity: 1667, entering: 353.15, tank: 323.15 }) // value 24998
 */
export function coilHeatRate({ conductance, flowCapacity, entering, tank }: CoilAtWork): Sizing {
  const why = firstImpossible(
    ['conductance of the coil', conductance, 'zero or more'],
    ['capacity of the flow', flowCapacity, 'above zero'],
    ['water entering the coil', entering, 'above zero'],
    ['temperature of the tank', tank, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const effect = flowCapacity * (1 - Math.exp(-conductance / flowCapacity))
  const value = effect * Math.max(0, entering - tank)
  return sized({
    value,
    working: [
      { name: 'heat for a degree between boiler water and tank', value: effect, unit: 'W/K' },
      { name: 'boiler water above the tank', value: entering - tank, unit: 'K' },
      { name: 'heat rate of the coil', value, unit: 'W' },
    ],
    assumed: ['a well mixed tank'],
    valid: true,
  })
}
