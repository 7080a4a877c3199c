import { si } from '../../units/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/**
 * Smallest inlet of a boiler's relief valve: 3/4, and 1/2 for small inputs.
 *
 * COMAR 09.12.01.13 and NAC 455C.232, read: 1/2 up to 15,000 Btu/h.
 *
 * @param input W
 * @returns nominal inches
 *
 * @example
 * smallestReliefInlet(29307) // value 0.75
 */
export function smallestReliefInlet(input: number): Sizing {
  const why = firstImpossible(['heat input', input, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const value = input <= smallInput * (1 + 1e-9) ? 0.5 : 0.75
  return sized({
    value,
    working: [
      { name: 'heat input', value: input, unit: 'W' },
      { name: 'smallest inlet', value, unit: 'nominal inches' },
    ],
    assumed: [],
    valid: true,
  })
}

const smallInput = si('heatRate', '15000 Btu/h')
