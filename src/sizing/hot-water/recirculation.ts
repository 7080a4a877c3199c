import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { heatCapacityOfVolume } from './heat-capacity-of-volume.js'

/** A stretch of a circulation loop. */
export interface LoopPipe {
  readonly name: string
  /** m */
  readonly length: number
  /** W/m, as {@link pipeHeatLoss} gives it. */
  readonly lossPerLength: number
}

interface LoopFlow {
  /** W */
  readonly loss: number
  /** K that the water may cool on its way round. */
  readonly drop: number
  /** K, mean of the loop. */
  readonly temperature: number
}

interface LoopReturn {
  /** K, water into the loop. */
  readonly supply: number
  /** K around the pipe. */
  readonly air: number
  /** W/K, loss of the whole loop for a degree between water and air. */
  readonly conductance: number
  /** m3/s */
  readonly flow: number
}

/**
 * Heat that a circulation loop loses.
 *
 * @returns W
 *
 * @example
 * recirculationLoss([{ name: 'return', length: 57.9, lossPerLength: 5.42 }]) // value 314
 */
export function recirculationLoss(pipes: readonly LoopPipe[]): Sizing {
  const why = firstImpossible(
    ...pipes.flatMap(({ name, length, lossPerLength }) => [
      [`length of ${name}`, length, 'zero or more'] as const,
      [`loss of ${name}`, lossPerLength, 'zero or more'] as const,
    ]),
  )
  if (why !== undefined) return cannotSize(why)
  const losses = pipes.map(({ name, length, lossPerLength }) => ({ name, value: length * lossPerLength, unit: 'W' }))
  const value = losses.reduce((sum, loss) => sum + loss.value, 0)
  return sized({
    value,
    working: [...losses, { name: 'loss of the loop', value, unit: 'W' }],
    assumed: [],
    valid: true,
  })
}

/**
 * Flow that carries the loss of a circulation loop with a given drop.
 *
 * @returns m3/s
 *
 * @example
 * recirculationFlow({ loss: 659, drop: 2.22, temperature: 322 }) // value 0.0000718, 1.14 gpm
 */
export function recirculationFlow({ loss, drop, temperature }: LoopFlow): Sizing {
  const why = firstImpossible(
    ['loss of the loop', loss, 'zero or more'],
    ['drop', drop, 'above zero'],
    ['temperature of the loop', temperature, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const { value: each, valid } = heatCapacityOfVolume(temperature)
  const value = loss / (each * drop)
  return sized({
    value,
    working: [
      { name: 'loss of the loop', value: loss, unit: 'W' },
      { name: 'heat for a cubic meter and degree', value: each, unit: 'J/m3 K' },
      { name: 'drop', value: drop, unit: 'K' },
      { name: 'flow', value, unit: 'm3/s' },
    ],
    assumed: [],
    valid,
  })
}

/**
 * Temperature with which a circulation loop comes back: the water nears the air around the pipe exponentially.
 *
 * @returns K
 *
 * @example
 * recirculationReturn({ supply: 333.15, air: 293.15, conductance: 20, flow: 7e-5 }) // value 330.5
 */
export function recirculationReturn({ supply, air, conductance, flow }: LoopReturn): Sizing {
  const why = firstImpossible(
    ['water into the loop', supply, 'above zero'],
    ['air around the pipe', air, 'above zero'],
    ['conductance of the loop', conductance, 'zero or more'],
    ['flow', flow, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const { value: each, valid } = heatCapacityOfVolume(supply)
  const left = Math.exp(-conductance / (flow * each))
  const value = air + (supply - air) * left
  return sized({
    value,
    working: [
      { name: 'capacity of the flow', value: flow * each, unit: 'W/K' },
      { name: 'part of the difference to the air that is left', value: left, unit: '1' },
      { name: 'return', value, unit: 'K' },
    ],
    assumed: ['properties of water as it enters the loop'],
    valid,
  })
}
