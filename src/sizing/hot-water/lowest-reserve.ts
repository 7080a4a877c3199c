import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/** Heat taken at once. */
export interface Draw {
  /** s after midnight */
  readonly start: number
  /** J */
  readonly heat: number
}

interface Day {
  /** J that a full tank gives before it turns cool. */
  readonly usableHeat: number
  /** W that reach the water. */
  readonly heatRate: number
  readonly draws: readonly Draw[]
}

/**
 * Least heat that is left in a tank over a day of draws, if it is full at midnight and its source runs whenever it is not.
 * Below zero the day asks more than tank and source give.
 *
 * @returns J
 *
 * @example
 * const draws = [{ start: 25_500, heat: 5.04e6 }]
 * lowestReserve({ usableHeat: 20e6, heatRate: 20_000, draws }) // value 14.96e6
 */
export function lowestReserve({ usableHeat, heatRate, draws }: Day): Sizing {
  const why = firstImpossible(
    ['usable heat of the tank', usableHeat, 'zero or more'],
    ['heat rate', heatRate, 'zero or more'],
    ...draws.flatMap(({ start, heat }) => [
      ['time of a draw', start, 'zero or more'] as const,
      ['heat of a draw', heat, 'zero or more'] as const,
    ]),
  )
  if (why !== undefined) return cannotSize(why)
  const inOrder = draws.toSorted((one, other) => one.start - other.start)
  const { lowest, at } = inOrder.reduce(
    (tank, { start, heat }) => {
      const left = Math.min(usableHeat, tank.left + heatRate * (start - tank.time)) - heat
      const worse = left < tank.lowest
      return { left, time: start, lowest: worse ? left : tank.lowest, at: worse ? start : tank.at }
    },
    { left: usableHeat, time: 0, lowest: usableHeat, at: 0 },
  )
  return sized({
    value: lowest,
    working: [
      { name: 'usable heat of the full tank', value: usableHeat, unit: 'J' },
      { name: 'drawn in the day', value: inOrder.reduce((sum, { heat }) => sum + heat, 0), unit: 'J' },
      { name: 'time of the lowest', value: at, unit: 's' },
      { name: 'lowest reserve', value: lowest, unit: 'J' },
    ],
    assumed: ['a full tank at midnight', 'each draw taken at once', 'no loss from the tank'],
    valid: true,
  })
}
