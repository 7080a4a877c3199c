import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface ReservedTank {
  /** m3, by which the fluid of the system swells. */
  readonly expansion: number
  /** m3, that lies in the tank when cold, for what is lost over a year. */
  readonly reserve: number
  /** Pa, gauge, of the air charge. */
  readonly precharge: number
  /** Pa, gauge, when hot. */
  readonly highest: number
  /** Pa, absolute. */
  readonly atmosphere: number
}

/**
 * Diaphragm tank that also holds a water reserve when cold, as EN 12828 reckons it (recalled).
 *
 * @returns m3, of the whole tank
 *
 * @example
 * tankWithReserve({ expansion: 0.00672, reserve: 0.003, precharge: 1e5, highest: 2.5e5, atmosphere: 1e5 }) // value 0.0227
 */
export function tankWithReserve({ expansion, reserve, precharge, highest, atmosphere }: ReservedTank): Sizing {
  const why = firstImpossible(
    ['swelling of the fluid', expansion, 'zero or more'],
    ['water reserve', reserve, 'zero or more'],
    ['air charge', precharge, 'zero or more'],
    ['highest pressure', highest, 'zero or more'],
    ['pressure of the air', atmosphere, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  if (precharge >= highest)
    return cannotSize('The air charge is not below the highest pressure: the tank takes nothing.')
  const part = (highest - precharge) / (highest + atmosphere)
  const value = (expansion + reserve) / part
  return sized({
    value,
    working: [
      { name: 'swelling and reserve', value: expansion + reserve, unit: 'm3' },
      { name: 'part of the tank that takes them up', value: part, unit: '1' },
      { name: 'tank', value, unit: 'm3' },
    ],
    assumed: ['air at one temperature'],
    valid: true,
  })
}
