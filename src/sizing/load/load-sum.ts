import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import type { Spread } from './spread.js'

/** A load that is known to within a spread. */
export interface UncertainLoad {
  readonly name: string
  /** W */
  readonly load: number
  /** How far it may be off to either side, as a share of it: 0.2 for 20 %. */
  readonly spread: number
}

/** A sum of loads between its bounds, or why there is none. */
export type LoadBand =
  | { readonly banded: true; readonly band: Spread; readonly working: Sizing }
  | { readonly banded: false; readonly why: string }

/**
 * Loads of rooms to a zone, of zones to a house, with the band that remains: what is off in one room is not off the same way in
 * another, so the spreads add by their squares.
 *
 * @returns W
 *
 * @example
 * loadSum([{ name: 'living', load: 2154, spread: 0.2 }, { name: 'dining', load: 1413, spread: 0.2 }])
 * // band: low 3052, likely 3567, high 4082
 */
export function loadSum(loads: readonly UncertainLoad[]): LoadBand {
  const why = firstImpossible(
    ...loads.flatMap(({ name, load, spread }) => [
      [`load of ${name}`, load, 'zero or more'] as const,
      [`spread of ${name}`, spread, 'a share'] as const,
    ]),
  )
  if (why !== undefined) return { banded: false, why }
  const likely = loads.reduce((sum, { load }) => sum + load, 0)
  const off = Math.hypot(...loads.map(({ load, spread }) => load * spread))
  const working = sized({
    value: likely,
    working: [
      ...loads.map(({ name, load }) => ({ name, value: load, unit: 'W' })),
      { name: 'off to either side', value: off, unit: 'W' },
      { name: 'load', value: likely, unit: 'W' },
    ],
    assumed: ['errors of the parts do not go together'],
    valid: true,
  })
  return { banded: true, band: { low: likely - off, likely, high: likely + off }, working }
}

/** How the load of a house compares with what is usual. */
export type LoadPlausibility = 'low' | 'usual' | 'high'

interface HouseLoad {
  /** W */
  readonly load: number
  /** m2, heated. */
  readonly area: number
  /** K between indoors and outdoors on the design day. */
  readonly difference: number
}

/**
 * Load of a square meter for each degree on the design day.
 *
 * @returns W/m2 K
 *
 * @example
 * // 42,850 Btu/h on 2,180 ft2 at 65 F
 * loadOfArea({ load: 12558, area: 202.5, difference: 36.11 }) // value 1.717
 */
export function loadOfArea({ load, area, difference }: HouseLoad): Sizing {
  const why = firstImpossible(
    ['load', load, 'zero or more'],
    ['heated area', area, 'above zero'],
    ['indoors above outdoors', difference, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const value = load / area / difference
  return sized({
    value,
    working: [
      { name: 'load of a square meter', value: load / area, unit: 'W/m2' },
      { name: 'for each degree', value, unit: 'W/m2 K' },
    ],
    assumed: [],
    valid: true,
  })
}

/**
 * Says whether a load of a renovated house is where such loads usually are: 15 to 30 Btu/h for a square foot at 65 to 70 F;
 * common practice. Outside it the inputs deserve a second look.
 *
 * @param each W/m2 K, from loadOfArea
 * @example
 * loadPlausibility(1.717) // 'usual'
 */
export function loadPlausibility(each: number): LoadPlausibility {
  if (each < usual.low) return 'low'
  return each > usual.high ? 'high' : 'usual'
}

/** 15 Btu/h ft2 over 70 F and 30 over 65 F, in W/m2 K. */
const usual = { low: (15 * 5.678263341) / 70, high: (30 * 5.678263341) / 65 } as const
