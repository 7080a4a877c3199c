import { fallingRoot } from '../falling-root.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { normalDensity, normalShare } from './normal-distribution.js'

interface MonthBelowBase {
  readonly days: number
  /** K, mean of the month. */
  readonly mean: number
  /** K, standard deviation of the daily means. */
  readonly spread: number
  /** K, below which degrees count. */
  readonly base: number
}

/**
 * Heating degree days of a month of which only the mean and the spread of its days are known: exact for daily means that spread
 * as a normal distribution (form of Schoenau and Kehrig 1990, recalled).
 *
 * @returns K days
 *
 * @example
 * monthDegreeDays({ days: 30, mean: 278.15, spread: 4.5, base: 291.45 }) // value 399.06
 */
export function monthDegreeDays({ days, mean, spread, base }: MonthBelowBase): Sizing {
  const why = firstImpossible(
    ['days of the month', days, 'zero or more'],
    ['mean of the month', mean, 'above zero'],
    ['spread of the days', spread, 'above zero'],
    ['base temperature', base, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const deviations = (base - mean) / spread
  const value = days * daily(spread, deviations)
  return sized({
    value,
    working: [
      { name: 'base above the mean', value: base - mean, unit: 'K' },
      { name: 'that in standard deviations', value: deviations, unit: '1' },
      { name: 'degrees below the base on an average day', value: daily(spread, deviations), unit: 'K' },
      { name: 'heating degree days', value, unit: 'K d' },
    ],
    assumed: ['daily means spread as a normal distribution'],
    valid: true,
  })
}

/**
 * Mean temperature of a month that has these degree days: the way back, for places of which only degree days are printed.
 *
 * @returns K
 *
 * @example
 * monthMean({ days: 30, degreeDays: 399.06, spread: 4.5, base: 291.45 }) // value 278.15
 */
export function monthMean({ degreeDays, ...month }: Omit<MonthBelowBase, 'mean'> & { degreeDays: number }): Sizing {
  const why = firstImpossible(
    ['degree days', degreeDays, 'above zero'],
    ['days of the month', month.days, 'above zero'],
    ['spread of the days', month.spread, 'above zero'],
    ['base temperature', month.base, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const [each, { base, spread }] = [degreeDays / month.days, month]
  if (each >= base) return cannotSize(`A month cannot have ${degreeDays} K days below ${base} K.`)
  const value = fallingRoot(
    (mean) => daily(spread, (base - mean) / spread) - each,
    base - each - spread,
    base + 9 * spread,
  )
  return sized({
    value,
    working: [
      { name: 'degrees below the base on an average day', value: each, unit: 'K' },
      { name: 'mean of the month', value, unit: 'K' },
    ],
    assumed: ['daily means spread as a normal distribution'],
    valid: value <= base + 3 * spread,
  })
}

function daily(spread: number, deviations: number): number {
  return Math.max(0, spread * (deviations * normalShare(deviations) + normalDensity(deviations)))
}
