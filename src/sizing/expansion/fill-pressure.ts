import { columnPressure } from '../column-pressure.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface Standing {
  /** m, from the gauge up to the highest place that must stay full; below zero when it lies lower. */
  readonly height: number
  /** kg/m3, of the cold fluid. */
  readonly density: number
  /** Pa, wanted at the highest place; 4 psi is common practice. */
  readonly margin: number
}

/**
 * Pressure to which a cold system is filled: the column up to its top, and what is wanted there. The air charge of a
 * diaphragm tank is set to the same pressure while the tank holds no water.
 *
 * @returns Pa, gauge
 *
 * @example
 * fillPressure({ height: 7.7724, density: 999.7, margin: 27579 }) // value 103777, or 15.05 psi
 */
export function fillPressure({ height, density, margin }: Standing): Sizing {
  const why = firstImpossible(
    ['height of the system', height, 'any'],
    ['density of the fluid', density, 'above zero'],
    ['pressure wanted at the top', margin, 'zero or more'],
  )
  if (why !== undefined) return cannotSize(why)
  const column = columnPressure({ height: Math.max(0, height), density })
  const value = column.value + margin
  return sized({
    value,
    working: [
      ...column.working,
      { name: 'pressure at the top', value: margin, unit: 'Pa' },
      { name: 'fill pressure', value, unit: 'Pa' },
    ],
    assumed: column.assumed,
    valid: column.valid,
  })
}
