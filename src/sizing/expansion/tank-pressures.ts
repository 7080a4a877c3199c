import { firstImpossible } from '../first-impossible.js'

/** The pressures between which a closed tank works. */
export interface TankPressures {
  /** Pa, gauge, at the tank, when cold. */
  readonly fill: number
  /** Pa, gauge, at the tank, when hot. */
  readonly highest: number
  /** Pa, absolute, of the air around; it falls with altitude. */
  readonly atmosphere: number
}

/** Tells what is impossible about the pressures of a tank. */
export function impossiblePressures({ fill, highest, atmosphere }: TankPressures): string | undefined {
  const why = firstImpossible(
    ['fill pressure', fill, 'zero or more'],
    ['highest pressure', highest, 'zero or more'],
    ['pressure of the air', atmosphere, 'above zero'],
  )
  if (why !== undefined || highest > fill) return why
  return `The highest pressure of ${highest} Pa leaves no room above the fill pressure of ${fill} Pa.`
}
