import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/**
 * Electrical power that the European circulator rule expects for a hydraulic power of 1 to 2,500 W.
 *
 * @param hydraulic W
 * @returns W
 *
 * @example
 * referencePower(20) // value 50.96
 */
export function referencePower(hydraulic: number): Sizing {
  const why = firstImpossible(['hydraulic power', hydraulic, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const value = 1.7 * hydraulic + 17 * (1 - Math.exp(-0.3 * hydraulic))
  return sized({
    value,
    working: [
      { name: 'hydraulic power', value: hydraulic, unit: 'W' },
      { name: 'reference power', value, unit: 'W' },
    ],
    assumed: [],
    valid: hydraulic >= 1 && hydraulic <= 2500,
  })
}

interface LoadProfile {
  /** W taken at 100, 75, 50 and 25 percent of the flow along the control line. */
  readonly powers: readonly [full: number, threeQuarters: number, half: number, quarter: number]
  /** W, greatest hydraulic power of the pump. */
  readonly hydraulic: number
}

/**
 * Energy efficiency index of a circulator that stands alone; 0.23 at most may be sold in Europe.
 *
 * @returns 1
 *
 * @example
 * circulatorEfficiencyIndex({ powers: [40, 25, 15, 9], hydraulic: 20 }) // value 0.148
 */
export function circulatorEfficiencyIndex({ powers, hydraulic }: LoadProfile): Sizing {
  const why = firstImpossible(...powers.map((power) => ['power taken', power, 'zero or more'] as const), [
    'hydraulic power',
    hydraulic,
    'above zero',
  ])
  if (why !== undefined) return cannotSize(why)
  const reference = referencePower(hydraulic)
  if (!reference.sized) return reference
  const mean = powers.reduce((sum, power, index) => sum + power * (timeShares[index] ?? 0), 0)
  const value = (calibration * mean) / reference.value
  return sized({
    value,
    working: [
      { name: 'mean power over the year', value: mean, unit: 'W' },
      ...reference.working.slice(-1),
      { name: 'energy efficiency index', value, unit: '1' },
    ],
    assumed: ['time shares of the European rule: 6, 15, 35 and 44 %'],
    valid: reference.valid,
  })
}

const timeShares = [0.06, 0.15, 0.35, 0.44]
const calibration = 0.49
