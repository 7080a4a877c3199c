import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/** How a load grows with the cold: nothing at the balance temperature, all at the design temperature. */
export interface LoadLine {
  /** K outdoors on the coldest design day. */
  readonly designOutdoor: number
  /** K outdoors from which sun, lamps and people keep the house warm; the room temperature where they are left out. */
  readonly balance: number
}

/**
 * Part of the design load at an outdoor temperature: a straight line, 0 to 1.
 *
 * @param outdoor K
 *
 * @example
 * loadShare({ designOutdoor: 258.15, balance: 294.26 }, 285.93) // value 0.2307, at 55 F
 */
export function loadShare({ designOutdoor, balance }: LoadLine, outdoor: number): Sizing {
  const why = firstImpossible(
    ['outdoor design temperature', designOutdoor, 'above zero'],
    ['balance temperature', balance, 'above zero'],
    ['outdoor temperature', outdoor, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  if (balance <= designOutdoor)
    return cannotSize(`The balance temperature cannot be ${balance} K: the design day has ${designOutdoor} K.`)
  const value = Math.min(1, Math.max(0, (balance - outdoor) / (balance - designOutdoor)))
  return sized({
    value,
    working: [
      { name: 'balance temperature above outdoors', value: balance - outdoor, unit: 'K' },
      { name: 'the same on the design day', value: balance - designOutdoor, unit: 'K' },
      { name: 'part of the design load', value, unit: '1' },
    ],
    assumed: ['the load is straight in the outdoor temperature'],
    valid: outdoor >= designOutdoor,
  })
}

/**
 * Load at an outdoor temperature.
 *
 * @returns W
 *
 * @example
 * loadAt({ line, designLoad: 4645, outdoor: 285.93 }) // value 1072, or 3,658 of 15,850 Btu/h at 55 F
 */
export function loadAt({ line, designLoad, outdoor }: LoadInWeather): Sizing {
  const why = firstImpossible(['design load', designLoad, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const share = loadShare(line, outdoor)
  if (!share.sized) return share
  const value = designLoad * share.value
  return sized({
    ...share,
    value,
    working: [
      ...share.working,
      { name: 'design load', value: designLoad, unit: 'W' },
      { name: 'load', value, unit: 'W' },
    ],
  })
}

interface LoadInWeather {
  readonly line: LoadLine
  /** W */
  readonly designLoad: number
  /** K */
  readonly outdoor: number
}
