import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/**
 * Height of a column of the fluid itself that presses as much: what pump curves are drawn in.
 *
 * @returns m
 *
 * @example
 * headOf({ pressure: 385, density: 983.2 }) // value 0.0399, or 0.131 ft
 */
export function headOf({ pressure, density }: { readonly pressure: number; readonly density: number }): Sizing {
  const why = firstImpossible(['pressure', pressure, 'any'], ['density', density, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const value = pressure / (density * standardGravity)
  return sized({
    value,
    working: [
      { name: 'pressure', value: pressure, unit: 'Pa' },
      { name: 'density', value: density, unit: 'kg/m3' },
      { name: 'head', value, unit: 'm', readAs: 'head' },
    ],
    assumed: ['standard gravity, 9.80665 m/s2'],
    valid: true,
  })
}

/** m/s2 */
export const standardGravity = 9.80665
