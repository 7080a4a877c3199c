import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface Burning {
  /** W, nameplate input at the altitude of the house. */
  readonly input: number
  /** J/m3 of gas at 60 F, as the supplier tells it for the place. */
  readonly heatingValue: number
}

/**
 * Gas that an input burns.
 *
 * @returns m3/s at 60 F
 *
 * @example
 * gasDemand({ input: 21980, heatingValue: 38.19e6 }) // value 0.000576, 73.2 cfh for 75,000 Btu/h at 1,025 Btu/ft3
 */
export function gasDemand({ input, heatingValue }: Burning): Sizing {
  const why = firstImpossible(
    ['heat input', input, 'zero or more'],
    ['heating value of the gas', heatingValue, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const value = input / heatingValue
  return sized({
    value,
    working: [
      { name: 'heat input', value: input, unit: 'W' },
      { name: 'heating value', value: heatingValue, unit: 'J/m3' },
      { name: 'gas flow', value, unit: 'm3/s', readAs: 'gas-flow' },
    ],
    assumed: [],
    valid: true,
  })
}
