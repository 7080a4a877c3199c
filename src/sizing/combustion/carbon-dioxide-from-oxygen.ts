import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { oxygenInAir } from './oxygen-in-air.js'

interface AnalyzerReading {
  /** Share of oxygen in the dry sample, from 0 to 0.209. */
  readonly oxygen: number
  /** Share of carbon dioxide without excess air: 0.118 natural gas, 0.138 propane. */
  readonly mostCarbonDioxide: number
}

/**
 * Carbon dioxide that an analyzer prints for a share of oxygen: the straight line between plain air and no excess air.
 *
 * @returns share of the dry sample
 *
 * @example
 * carbonDioxideFromOxygen({ oxygen: 0.048, mostCarbonDioxide: 0.118 }) // value 0.0909
 */
export function carbonDioxideFromOxygen({ oxygen, mostCarbonDioxide }: AnalyzerReading): Sizing {
  const why = firstImpossible(
    ['share of oxygen', oxygen, 'zero or more'],
    ['highest share of carbon dioxide', mostCarbonDioxide, 'a share'],
  )
  if (why !== undefined) return cannotSize(why)
  if (oxygen > oxygenInAir) return cannotSize(`A sample with ${oxygen * 100} % of oxygen has more than plain air.`)
  const value = (mostCarbonDioxide * (oxygenInAir - oxygen)) / oxygenInAir
  return sized({
    value,
    working: [
      { name: 'carbon dioxide without excess air', value: mostCarbonDioxide, unit: '1' },
      { name: 'part of the sample that is not air', value: (oxygenInAir - oxygen) / oxygenInAir, unit: '1' },
      { name: 'carbon dioxide', value, unit: '1' },
    ],
    assumed: ['20.9 % of oxygen in air'],
    valid: true,
  })
}
