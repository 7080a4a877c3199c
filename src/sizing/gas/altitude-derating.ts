import { si } from '../../units/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface HighPlace {
  /** m */
  readonly altitude: number
  /** From where the 4 % for each 1,000 ft are counted: texts differ, and the maker's figure goes before either. */
  readonly countedFrom: 'sea' | 'two-thousand-feet'
}

/**
 * Share of its nameplate input that an appliance keeps at an altitude when its maker says nothing: all up to 2,000 ft, above
 * that 4 % less for each 1,000 ft.
 *
 * Counted above 2,000 ft: several published texts; from the sea: national fuel gas code, recalled. Sealed burners with a fan
 * often lose less.
 *
 * @returns 0 to 1
 *
 * @example
 * altitudeShare({ altitude: 1645.92, countedFrom: 'two-thousand-feet' }) // value 0.864 at 5,400 ft
 */
export function altitudeShare({ altitude, countedFrom }: HighPlace): Sizing {
  const why = firstImpossible(['altitude', altitude, 'any'])
  if (why !== undefined) return cannotSize(why)
  const counted = altitude <= start ? 0 : altitude - (countedFrom === 'sea' ? 0 : start)
  const value = 1 - (0.04 * counted) / step
  if (value <= 0) return cannotSize(`At ${altitude} m the rule of 4 % for each 1,000 ft leaves no input.`)
  return sized({
    value,
    working: [
      { name: 'altitude', value: altitude, unit: 'm', readAs: 'distance' },
      { name: 'altitude that counts', value: counted, unit: 'm', readAs: 'distance' },
      { name: 'share of the input', value, unit: '1' },
    ],
    assumed: ['no figure of the maker'],
    valid: altitude <= si('length', '10000 ft'),
  })
}

const start = si('length', '2000 ft')
const step = si('length', '1000 ft')
