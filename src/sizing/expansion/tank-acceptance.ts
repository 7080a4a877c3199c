import { firstImpossible } from '../first-impossible.js'
import type { Step } from '../sized.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { impossiblePressures, type TankPressures } from './tank-pressures.js'

/** A tank as it is fitted. */
export interface FittedTank extends TankPressures {
  /** m3, the whole tank. */
  readonly volume: number
  /** Pa, gauge, of the air charge without water on it; zero for a plain steel tank. */
  readonly precharge: number
  /** m3, the most that the maker lets in, where he says so. */
  readonly limit?: number
}

/**
 * Water that a tank takes up between the fill pressure and the highest pressure: by its air, and no more than its maker
 * allows. A charge below the fill pressure lets water in already when cold; one above it leaves the tank idle until the
 * system reaches it.
 *
 * @returns m3
 *
 * @example
 * // 4.4 gal from 12 psi to 30 psi: value 0.00671, or 1.77 gal
 * tankAcceptance({ volume: 0.016656, precharge: 82737, fill: 82737, highest: 206843, atmosphere: 101353 })
 */
export function tankAcceptance(tank: FittedTank): Sizing {
  const why = impossibleTank(tank)
  if (why !== undefined) return cannotSize(why)
  const { volume, limit, highest, atmosphere } = tank
  const air = coldAir(tank)
  const start = Math.max(tank.fill, tank.precharge) + atmosphere
  const byAir = Math.max(0, air - (air * start) / (highest + atmosphere))
  const room = limit === undefined ? volume : Math.max(0, limit - (volume - air))
  const value = Math.min(byAir, room)
  const allowed: readonly Step[] =
    limit === undefined ? [] : [{ name: 'what the maker allows', value: room, unit: 'm3' }]
  return sized({
    value,
    working: [
      { name: 'air in the tank when cold', value: air, unit: 'm3' },
      { name: 'what the air gives up', value: byAir, unit: 'm3' },
      ...allowed,
      { name: 'acceptance', value, unit: 'm3' },
    ],
    assumed: ['air at one temperature', ...(limit === undefined ? ['no limit of the maker'] : [])],
    valid: true,
  })
}

/** Tells what is impossible about a fitted tank. */
export function impossibleTank({ volume, precharge, limit, ...pressures }: FittedTank): string | undefined {
  return (
    firstImpossible(
      ['volume of the tank', volume, 'above zero'],
      ['air charge', precharge, 'zero or more'],
      ['acceptance limit of the tank', limit ?? 0, 'zero or more'],
    ) ?? impossiblePressures(pressures)
  )
}

/** m3 of air in a tank at the fill pressure. */
export function coldAir({ volume, precharge, fill, atmosphere }: Omit<FittedTank, 'highest' | 'limit'>): number {
  return (volume * (precharge + atmosphere)) / (Math.max(fill, precharge) + atmosphere)
}
