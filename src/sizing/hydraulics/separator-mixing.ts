import { type Expected, firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface SeparatorFlows {
  /** m3/s, above zero. */
  readonly boilerFlow: number
  /** m3/s, above zero. */
  readonly systemFlow: number
  /** K, from the boiler into the separator. */
  readonly boilerSupply: number
  /** K, from the system into the separator. */
  readonly systemReturn: number
}

/**
 * Temperature that goes back to the boiler from a hydraulic separator: where the boiler moves more than the system, its own
 * supply comes along.
 *
 * @returns K
 *
 * @example
 * // 21.6 gpm at 160 F against 12.4 gpm that come back at 130 F: value 334.6, or 142.8 F
 * separatorReturn({ boilerFlow: 0.001363, systemFlow: 0.000782, boilerSupply: 344.26, systemReturn: 327.59 })
 */
export function separatorReturn(flows: SeparatorFlows): Sizing {
  const { boilerFlow, systemFlow, boilerSupply, systemReturn } = flows
  const share = Math.max(0, boilerFlow - systemFlow) / boilerFlow
  return mixed(flows, {
    share,
    value: systemReturn + share * (boilerSupply - systemReturn),
    names: ['supply that turns back', 'mixed return'],
  })
}

/**
 * Temperature that goes to the system from a hydraulic separator: where the system moves more than the boiler, its own return
 * comes along.
 *
 * @returns K
 *
 * @example
 * separatorSupply({ boilerFlow: 0.0005, systemFlow: 0.001, boilerSupply: 345, systemReturn: 325 }) // value 335
 */
export function separatorSupply(flows: SeparatorFlows): Sizing {
  const { boilerFlow, systemFlow, boilerSupply, systemReturn } = flows
  const share = Math.max(0, systemFlow - boilerFlow) / systemFlow
  return mixed(flows, {
    share,
    value: boilerSupply + share * (systemReturn - boilerSupply),
    names: ['return that turns back', 'mixed supply'],
  })
}

interface Mixture {
  /** Of the flow that leaves, what only turned back. */
  readonly share: number
  readonly value: number
  readonly names: readonly [turnedBack: string, result: string]
}

function mixed(flows: SeparatorFlows, { share, value, names }: Mixture): Sizing {
  const why = firstImpossible(...flowsExpected(flows))
  if (why !== undefined) return cannotSize(why)
  return sized({
    value,
    working: [
      { name: 'flow of the boiler', value: flows.boilerFlow, unit: 'm3/s' },
      { name: 'flow of the system', value: flows.systemFlow, unit: 'm3/s' },
      { name: names[0], value: share, unit: '1' },
      { name: names[1], value, unit: 'K' },
    ],
    assumed: ['the separator mixes fully and loses no heat', 'equal density on both sides'],
    valid: flows.boilerSupply >= flows.systemReturn,
  })
}

function flowsExpected({ boilerFlow, systemFlow, boilerSupply, systemReturn }: SeparatorFlows): readonly Expected[] {
  return [
    ['flow of the boiler', boilerFlow, 'above zero'],
    ['flow of the system', systemFlow, 'above zero'],
    ['supply of the boiler', boilerSupply, 'above zero'],
    ['return of the system', systemReturn, 'above zero'],
  ]
}
