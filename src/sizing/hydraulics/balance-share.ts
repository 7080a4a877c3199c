import { firstImpossible } from '../first-impossible.js'
import { flowExpected } from '../friction/flow-in-pipe.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/**
 * What a branch gets of the flow for which it is designed.
 *
 * @returns 1
 *
 * @example
 * balanceShare({ flow: 0.0000995, designFlow: 0.0001 }) // value 0.995
 */
export function balanceShare({ flow, designFlow }: { readonly flow: number; readonly designFlow: number }): Sizing {
  const why = firstImpossible(flowExpected(flow), ['design flow', designFlow, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const value = flow / designFlow
  return sized({
    value,
    working: [
      { name: 'flow', value: flow, unit: 'm3/s' },
      { name: 'design flow', value: designFlow, unit: 'm3/s' },
      { name: 'share of the design flow', value, unit: '1' },
    ],
    assumed: [],
    valid: true,
  })
}
