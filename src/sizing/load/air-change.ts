import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface LeakyVolume {
  /** m3 */
  readonly volume: number
  /** 1/s: one change an hour is 1/3600. */
  readonly airChange: number
  /** J/m3 K, of the air. */
  readonly airHeatCapacity: number
}

/**
 * Heat that a degree between inside and outside carries off with the air that leaks or is fanned through.
 *
 * @returns W/K
 *
 * @example
 * // 300 m3 with half a change an hour; 1224 J/m3 K is the 0.34 of EN 12831: 1785 W at 35 K
 * airChangeConductance({ volume: 300, airChange: 0.5 / 3600, airHeatCapacity: 1224 }) // value 51
 */
export function airChangeConductance({ volume, airChange, airHeatCapacity }: LeakyVolume): Sizing {
  const why = firstImpossible(
    ['volume of air', volume, 'zero or more'],
    ['air change', airChange, 'zero or more'],
    ['heat capacity of the air', airHeatCapacity, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const flow = volume * airChange
  const value = flow * airHeatCapacity
  return sized({
    value,
    working: [
      { name: 'air flow', value: flow, unit: 'm3/s', readAs: 'air' },
      { name: 'heat capacity of a volume of air', value: airHeatCapacity, unit: 'J/m3 K' },
      { name: 'conductance of the air change', value, unit: 'W/K' },
    ],
    assumed: [],
    valid: airChange <= 5 / 3600,
  })
}

/** How the wind gets at a house. */
export type WindExposure = 'windy' | 'usual' | 'sheltered'

interface BlowerDoor {
  /** 1/s at 50 Pa, measured with a fan in the door. */
  readonly airChangeAt50: number
  readonly exposure: WindExposure
}

/**
 * Air change by the wind, from a test at 50 Pa: a twentieth, in cold windy places a fifteenth, sheltered a twenty-fifth; common
 * practice.
 *
 * @returns 1/s
 *
 * @example
 * leakage({ airChangeAt50: 10 / 3600, exposure: 'usual' }) // value 0.5 an hour
 */
export function leakage({ airChangeAt50, exposure }: BlowerDoor): Sizing {
  const why = firstImpossible(['air change at 50 Pa', airChangeAt50, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const value = airChangeAt50 / divisors[exposure]
  return sized({
    value,
    working: [
      { name: 'air change at 50 Pa', value: airChangeAt50, unit: '1/s' },
      { name: `over, ${exposure}`, value: divisors[exposure], unit: '1' },
      { name: 'air change', value, unit: '1/s' },
    ],
    assumed: ['common practice for the wind'],
    valid: true,
  })
}

const divisors: Readonly<Record<WindExposure, number>> = { windy: 15, usual: 20, sheltered: 25 }
