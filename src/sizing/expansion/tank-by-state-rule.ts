import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { si } from '../../units/index.js'
import { impossiblePressures, type TankPressures } from './tank-pressures.js'

interface RuledTank extends TankPressures {
  /** m3 */
  readonly systemVolume: number
  /** K, the mean temperature of the hot water. */
  readonly hot: number
}

/**
 * Plain steel tank by the formula of state boiler rules, which tells the swelling of water by a straight line. It is for
 * air-cushion tanks only: a diaphragm tank sized by it comes out wrong.
 *
 * 13 NCAC 13 .0412 and Mich. R 408.4272, read; also IMC 1009, recalled. Valid from 160 F to 280 F.
 *
 * @returns m3, of the whole tank
 *
 * @example
 * // 100 gal at 195 F, 12 psi fill, 30 psi at the most: value 0.0568, or 15 gal
 * tankByStateRule({ systemVolume: 0.3785, hot: 363.7, fill: 82737, highest: 206843, atmosphere: 101353 })
 */
export function tankByStateRule({ systemVolume, hot, ...pressures }: RuledTank): Sizing {
  const why =
    firstImpossible(['content of the system', systemVolume, 'zero or more'], ['hot temperature', hot, 'above zero']) ??
    impossiblePressures(pressures)
  if (why !== undefined) return cannotSize(why)
  const { fill, highest, atmosphere } = pressures
  const swelling = slope * ((hot - zeroFahrenheit) / degreeFahrenheit) - offset
  if (swelling <= 0) return cannotSize(`At ${hot} K the formula of the boiler rules sees no swelling.`)
  const part = atmosphere / (fill + atmosphere) - atmosphere / (highest + atmosphere)
  const value = (swelling * systemVolume) / part
  return sized({
    value,
    working: [
      { name: 'swelling of the water', value: swelling, unit: '1' },
      { name: 'part of the tank that takes it up', value: part, unit: '1' },
      { name: 'tank', value, unit: 'm3' },
    ],
    assumed: ['water without antifreeze', 'a plain steel tank'],
    valid: hot >= si('temperature', '160 F') && hot <= si('temperature', '280 F'),
  })
}

/** The straight line of the rule, in degrees Fahrenheit. */
const slope = 0.00041
const offset = 0.0466
const zeroFahrenheit = si('temperature', '0 F')
const degreeFahrenheit = si('temperatureDifference', '1 F')
