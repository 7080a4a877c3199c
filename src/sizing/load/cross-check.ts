import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface TwoWays {
  /** W/K or W, from rooms and walls. */
  readonly rooms: number
  /** In the same unit, from bills. */
  readonly bills: number
}

/**
 * How far the bills lie from the rooms, as a share of the rooms: the errors of the two are independent, so beyond 25 % one of
 * them is wrong. Below zero the house burns less than the rooms say.
 *
 * @example
 * crossCheck({ rooms: 350, bills: 280 }) // value -0.2
 */
export function crossCheck({ rooms, bills }: TwoWays): Sizing {
  const why = firstImpossible(
    ['figure from the rooms', rooms, 'above zero'],
    ['figure from the bills', bills, 'zero or more'],
  )
  if (why !== undefined) return cannotSize(why)
  const value = bills / rooms - 1
  return sized({
    value,
    working: [
      { name: 'from the bills over from the rooms', value: bills / rooms, unit: '1' },
      { name: 'bills above the rooms', value, unit: '1' },
    ],
    assumed: [],
    valid: true,
  })
}

/** Widest difference of rooms and bills that needs no explanation; common practice. */
export const widestAgreement = 0.25
