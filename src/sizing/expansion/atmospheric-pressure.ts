import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/**
 * Mean pressure of the air at an altitude: the standard atmosphere, below 11,000 m.
 *
 * @param altitude m above the sea
 * @returns Pa, absolute
 *
 * @example
 * atmosphericPressure(1645.92) // value 83100, or 12.05 psi, at 5,400 ft
 */
export function atmosphericPressure(altitude: number): Sizing {
  const why = firstImpossible(['altitude', altitude, 'any'])
  if (why !== undefined) return cannotSize(why)
  if (altitude >= seaTemperature / lapse) return cannotSize(`At ${altitude} m the lower atmosphere has ended.`)
  const ratio = 1 - (lapse * altitude) / seaTemperature
  const value = seaPressure * ratio ** exponent
  return sized({
    value,
    working: [
      { name: 'altitude', value: altitude, unit: 'm', readAs: 'distance' },
      { name: 'temperature over that at the sea', value: ratio, unit: '1' },
      { name: 'pressure of the air', value, unit: 'Pa' },
    ],
    assumed: ['the standard atmosphere, without the weather'],
    valid: altitude >= -500 && altitude <= 11_000,
  })
}

/** The International Standard Atmosphere (ISO 2533), from memory: Pa, K, K/m, and gravity over lapse and gas constant. */
const seaPressure = 101_325
const seaTemperature = 288.15
const lapse = 0.0065
const exponent = 5.25588
