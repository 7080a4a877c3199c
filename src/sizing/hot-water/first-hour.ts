import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { mixedVolume } from './mixing.js'
import { recovery } from './recovery.js'

interface HotWaterSupply {
  /** m3 */
  readonly volume: number
  /** Part of the tank that leaves it before it turns cool; common practice 0.7 to 0.9. */
  readonly usable: number
  /** K */
  readonly stored: number
  /** K */
  readonly cold: number
  /** K at which the water is delivered, after mixing. */
  readonly delivered: number
  /** W that reach the water: the least of boiler output, coil and flow. */
  readonly heatRate: number
}

interface Period extends HotWaterSupply {
  /** s: 600, 3600 or 86400 for ten minutes, an hour or a day. */
  readonly period: number
}

/**
 * Mixed water that a tank and its source deliver in the first hour of steady draw.
 *
 * @returns m3
 *
 * @example
 * const supply = { volume: 0.1703, usable: 0.8, stored: 333.15, cold: 280.37, delivered: 322.04, heatRate: 20515 }
 * firstHour(supply) // value 0.598, 158 gal
 */
export function firstHour(supply: HotWaterSupply): Sizing {
  return deliverable({ ...supply, period: 3600 })
}

/**
 * Mixed water that a tank, full at the start, and its source deliver in a period.
 *
 * @returns m3
 *
 * @example
 * const supply = { volume: 0.1703, usable: 0.8, stored: 333.15, cold: 280.37, delivered: 322.04, heatRate: 20515 }
 * deliverable({ ...supply, period: 600 }) // value 0.2435, 64 gal
 */
export function deliverable({ volume, usable, stored, cold, delivered, heatRate, period }: Period): Sizing {
  const why = firstImpossible(['period', period, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const tank = mixedVolume({ volume, usable, hot: stored, cold, mixed: delivered })
  if (!tank.sized) return tank
  const source = recovery({ heatRate, cold, hot: delivered })
  if (!source.sized) return source
  const value = tank.value + source.value * period
  return sized({
    value,
    working: [
      ...tank.working,
      ...source.working,
      { name: 'from the source in the period', value: source.value * period, unit: 'm3', readAs: 'water' },
      { name: 'delivered', value, unit: 'm3', readAs: 'water' },
    ],
    assumed: ['the source runs from the start', ...source.assumed],
    valid: source.valid,
  })
}
