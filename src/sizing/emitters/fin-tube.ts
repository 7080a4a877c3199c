import { finTubeFactors } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { interpolate } from '../interpolate.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/**
 * Output of fin-tube over its output with water at 215 F and air at 65 F, between the lines of the rating table.
 *
 * @param of what differs from the rating: the mean of the water, or the air that enters
 * @param temperature K
 *
 * @example
 * finTubeFactor('water', 333.15) // value 0.4, at 140 F
 */
export function finTubeFactor(of: 'water' | 'air', temperature: number): Sizing {
  const why = firstImpossible([`temperature of the ${of}`, temperature, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const points = finTubeFactors(of).map((row) => [row.temperature, row.factor] as const)
  const { value, within } = interpolate(points, temperature)
  return sized({
    value,
    working: [
      { name: `temperature of the ${of}`, value: temperature, unit: 'K' },
      { name: 'factor', value, unit: '1' },
    ],
    assumed: [of === 'water' ? 'air at 65 F' : 'water at 215 F'],
    valid: within,
  })
}

interface FlowOverRated {
  /** Any measure of flow, the same for both. */
  readonly flow: number
  readonly ratedFlow: number
}

/**
 * What another flow makes of the output of fin-tube: the flow over the rated one to the power of 0.04.
 *
 * @example
 * finTubeFlowFactor({ flow: 4, ratedFlow: 1 }) // value 1.057
 */
export function finTubeFlowFactor({ flow, ratedFlow }: FlowOverRated): Sizing {
  const why = firstImpossible(['flow', flow, 'zero or more'], ['rated flow', ratedFlow, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const value = (flow / ratedFlow) ** 0.04
  return sized({
    value,
    working: [
      { name: 'flow over rated flow', value: flow / ratedFlow, unit: '1' },
      { name: 'factor', value, unit: '1' },
    ],
    assumed: ['turbulent flow'],
    valid: flow >= ratedFlow / 4 && flow <= ratedFlow * 10,
  })
}
