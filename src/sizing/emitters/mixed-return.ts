import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/** Water on its way back. */
export interface ReturningFlow {
  /** kg/s, or any other measure that is the same for all. */
  readonly flow: number
  /** K */
  readonly temperature: number
}

/**
 * Temperature of returns that run together.
 *
 * @returns K
 *
 * @example
 * mixedReturn([{ flow: 0.08, temperature: 321.15 }, { flow: 0.06, temperature: 318.15 }]) // value 319.9
 */
export function mixedReturn(returns: readonly ReturningFlow[]): Sizing {
  const why = firstImpossible(
    ...returns.flatMap(({ flow, temperature }) => [
      ['flow of a return', flow, 'zero or more'] as const,
      ['temperature of a return', temperature, 'above zero'] as const,
    ]),
  )
  if (why !== undefined) return cannotSize(why)
  const total = returns.reduce((sum, { flow }) => sum + flow, 0)
  if (total === 0) return cannotSize('Nothing returns.')
  const value = returns.reduce((sum, { flow, temperature }) => sum + (flow / total) * temperature, 0)
  return sized({
    value,
    working: [
      ...returns.map(({ flow, temperature }) => ({
        name: `return, ${flow} of ${total}`,
        value: temperature,
        unit: 'K',
      })),
      { name: 'mixed return', value, unit: 'K' },
    ],
    assumed: ['the same heat capacity in all returns'],
    valid: true,
  })
}
