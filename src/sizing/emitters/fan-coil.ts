import { fallingRoot } from '../falling-root.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface Exchange {
  /** NTU: conductance over the smaller heat capacity flow. */
  readonly transferUnits: number
  /** Smaller over larger heat capacity flow; 0 where one side keeps its temperature. */
  readonly capacityRatio: number
}

/**
 * Effectiveness of a counterflow exchanger: the heat it moves over the most that could be moved.
 *
 * @example
 * effectiveness({ transferUnits: 1.2, capacityRatio: 0 }) // value 0.6988
 */
export function effectiveness({ transferUnits, capacityRatio }: Exchange): Sizing {
  const why = firstImpossible(
    ['number of transfer units', transferUnits, 'zero or more'],
    ['ratio of the flows', capacityRatio, 'a share'],
  )
  if (why !== undefined) return cannotSize(why)
  const value = counterflow(transferUnits, capacityRatio)
  return sized({
    value,
    working: [
      { name: 'transfer units', value: transferUnits, unit: '1' },
      { name: 'ratio of the flows', value: capacityRatio, unit: '1' },
      { name: 'effectiveness', value, unit: '1' },
    ],
    assumed: ['counterflow'],
    valid: true,
  })
}

/** A coil with a fan as its maker rates it. */
export interface RatedCoil {
  /** W */
  readonly output: number
  /** K, water that enters. */
  readonly water: number
  /** K, air that enters. */
  readonly air: number
  /** W/K: mass flow times heat capacity, of the air and of the water. */
  readonly airCapacity: number
  readonly waterCapacity: number
  /** Part of the resistance to heat that lies on the water side, 0 to 1. */
  readonly waterSideShare: number
}

interface CoilAtFlow {
  readonly coil: RatedCoil
  /** K, water that enters. */
  readonly water: number
  /** K, air that enters. */
  readonly air: number
  /** W/K, of the water. */
  readonly waterCapacity: number
}

/**
 * Output of a coil with a fan at another flow and other temperatures. The water side follows the flow to the power of 0.8;
 * a trade table can be followed within 8 % with a share of 0.2, while 0.3 misses its widest drops by 11 %, so the share matters
 * there. At the rated flow the output is straight in the difference of the entering water and air.
 *
 * @returns W
 */
export function fanCoilOutput({ coil, water, air, waterCapacity }: CoilAtFlow): Sizing {
  const why = firstImpossible(
    ['rated output', coil.output, 'above zero'],
    ['rated difference of water and air', coil.water - coil.air, 'above zero'],
    ['heat capacity of the air flow', coil.airCapacity, 'above zero'],
    ['rated heat capacity of the water flow', coil.waterCapacity, 'above zero'],
    ['part of the resistance on the water side', coil.waterSideShare, 'a share'],
    ['heat capacity of the water flow', waterCapacity, 'above zero'],
    ['water that enters', water, 'above zero'],
    ['air that enters', air, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const rated = coil.output / (smaller(coil, coil.waterCapacity) * (coil.water - coil.air))
  const reachable = counterflow(mostTransferUnits, ratio(coil, coil.waterCapacity))
  if (rated >= reachable) return cannotSize(`The rated output of ${coil.output} W is more than these flows can carry.`)
  const units = fallingRoot((each) => rated - counterflow(each, ratio(coil, coil.waterCapacity)), 0, mostTransferUnits)
  const conductance = units * smaller(coil, coil.waterCapacity)
  const resistance =
    (1 - coil.waterSideShare + coil.waterSideShare / (waterCapacity / coil.waterCapacity) ** 0.8) / conductance
  const least = smaller(coil, waterCapacity)
  const effect = counterflow(1 / (resistance * least), ratio(coil, waterCapacity))
  const value = effect * least * Math.max(0, water - air)
  return sized({
    value,
    working: [
      { name: 'rated effectiveness', value: rated, unit: '1' },
      { name: 'rated conductance', value: conductance, unit: 'W/K' },
      { name: 'conductance at this flow', value: 1 / resistance, unit: 'W/K' },
      { name: 'effectiveness', value: effect, unit: '1' },
      { name: 'water above the air', value: water - air, unit: 'K' },
      { name: 'output', value, unit: 'W' },
    ],
    assumed: ['constant air flow', 'counterflow'],
    valid: waterCapacity >= coil.waterCapacity / 5 && waterCapacity <= coil.waterCapacity * 5,
  })
}

function counterflow(units: number, capacities: number): number {
  // Equal flows make the general form 0/0.
  if (1 - capacities < 1e-9) return units / (1 + units)
  const left = Math.exp(-units * (1 - capacities))
  return (1 - left) / (1 - capacities * left)
}

function smaller({ airCapacity }: RatedCoil, waterCapacity: number): number {
  return Math.min(airCapacity, waterCapacity)
}

function ratio(coil: RatedCoil, waterCapacity: number): number {
  return smaller(coil, waterCapacity) / Math.max(coil.airCapacity, waterCapacity)
}

const mostTransferUnits = 50
