import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { hotShare } from './mixing.js'
import { recovery } from './recovery.js'

interface Wanted {
  /** m3 at the delivered temperature in the period. */
  readonly demand: number
  /** s: 600, 3600 or 86400 for ten minutes, an hour or a day. */
  readonly period: number
  /** Part of the tank that leaves it before it turns cool; common practice 0.7 to 0.9. */
  readonly usable: number
  /** K */
  readonly stored: number
  /** K */
  readonly cold: number
  /** K */
  readonly delivered: number
  /** W that reach the water. */
  readonly heatRate: number
}

/**
 * Smallest tank that meets a demand together with its source.
 *
 * @returns m3; 0 where the source alone is enough
 *
 * @example
 * const water = { usable: 0.8, stored: 333.15, cold: 280.37, delivered: 322.04, heatRate: 20515 }
 * tankForDemand({ ...water, demand: 0.3, period: 600 }) // value 0.226, 60 gal
 */
export function tankForDemand({ demand, period, usable, stored, cold, delivered, heatRate }: Wanted): Sizing {
  const why = firstImpossible(
    ['demand', demand, 'zero or more'],
    ['period', period, 'zero or more'],
    ['usable part of the tank', usable, 'a share'],
    ['usable part of the tank', usable, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const share = hotShare({ hot: stored, cold, mixed: delivered })
  if (!share.sized) return share
  const source = recovery({ heatRate, cold, hot: delivered })
  if (!source.sized) return source
  const fromTank = Math.max(0, demand - source.value * period)
  const value = (fromTank * share.value) / usable
  return sized({
    value,
    working: [
      ...share.working,
      ...source.working,
      { name: 'from the source in the period', value: source.value * period, unit: 'm3' },
      { name: 'mixed water from the tank', value: fromTank, unit: 'm3' },
      { name: 'tank', value, unit: 'm3' },
    ],
    assumed: ['the source runs from the start', ...source.assumed],
    valid: source.valid,
  })
}
