import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface HeatedYear {
  /** W */
  readonly designLoad: number
  /** K between indoors and outdoors on the design day. */
  readonly difference: number
  /** K days */
  readonly degreeDays: number
  /** Part of the burned heat that reaches the house over the year. */
  readonly efficiency: number
  /** What sun and people take off the degree days: 0.6 to 1 with a base of 65 F; 1 with the true balance temperature. */
  readonly correction: number
}

/**
 * Fuel of a year by degree days.
 *
 * @returns J, gross
 *
 * @example
 * // 40,000 Btu/h at 60 F, 6,606 F days, 90 %: 1,174 therms
 * fuelOfYear({ designLoad: 11723, difference: 33.33, degreeDays: 3670, efficiency: 0.9, correction: 1 }) // value 123.9e9
 */
export function fuelOfYear({ designLoad, difference, degreeDays, efficiency, correction }: HeatedYear): Sizing {
  const why = firstImpossible(
    ['design load', designLoad, 'zero or more'],
    ['difference on the design day', difference, 'above zero'],
    ['degree days', degreeDays, 'zero or more'],
    ['efficiency', efficiency, 'a share'],
    ['efficiency', efficiency, 'above zero'],
    ['correction of the degree days', correction, 'a share'],
  )
  if (why !== undefined) return cannotSize(why)
  const conductance = designLoad / difference
  const heat = conductance * degreeDays * 86_400 * correction
  const value = heat / efficiency
  return sized({
    value,
    working: [
      { name: 'conductance', value: conductance, unit: 'W/K' },
      { name: 'heat of the year', value: heat, unit: 'J' },
      { name: 'fuel of the year', value, unit: 'J' },
    ],
    assumed: [],
    valid: correction >= 0.6,
  })
}
