import { si } from '../../units/index.js'
import { columnPressure } from '../column-pressure.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/** How far below its setting a relief valve is left alone: a share of the setting, and at the least a pressure. */
export interface ReliefMargin {
  readonly share: number
  /** Pa */
  readonly least: number
}

/** Ten percent of the setting and no less than 3 psi (20,684 Pa). Common practice. */
export const usualReliefMargin: ReliefMargin = Object.freeze({ share: 0.1, least: si('pressure', '3 psi') })

interface Relief {
  /** Pa, gauge, at which the relief valve opens. */
  readonly setting: number
  readonly margin: ReliefMargin
  /** m, of the relief valve above the place asked about, commonly the tank; below zero when it stands lower. */
  readonly above: number
  /** kg/m3, of the hot fluid. */
  readonly density: number
}

/**
 * Highest pressure that a hot system may reach at a place, so that the relief valve stays shut.
 *
 * @returns Pa, gauge
 *
 * @example
 * highestPressure({ setting: 206843, margin: usualReliefMargin, above: 0, density: 975 }) // value 186158, or 27 psi
 */
export function highestPressure({ setting, margin, above, density }: Relief): Sizing {
  const why = firstImpossible(
    ['setting of the relief valve', setting, 'above zero'],
    ['share left below the relief setting', margin.share, 'a share'],
    ['pressure left below the relief setting', margin.least, 'zero or more'],
    ['height of the relief valve', above, 'any'],
    ['density of the fluid', density, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const left = Math.max(margin.share * setting, margin.least)
  const column = columnPressure({ height: above, density })
  const value = setting - left + column.value
  if (value <= 0) return cannotSize('The relief valve opens too low to leave any pressure below its setting.')
  return sized({
    value,
    working: [
      { name: 'setting of the relief valve', value: setting, unit: 'Pa' },
      { name: 'left below it', value: left, unit: 'Pa' },
      ...column.working,
      { name: 'highest pressure', value, unit: 'Pa' },
    ],
    assumed: column.assumed,
    valid: true,
  })
}
