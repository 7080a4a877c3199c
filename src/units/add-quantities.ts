import type { QuantityName } from './quantity.js'

/**
 * What the sum of two amounts is: the same of the same, a temperature and a difference make a temperature, a date and a
 * time make a date. Note that dates are held in days and times in seconds: divide the time by {@link secondsPerDay}.
 *
 * @returns the quantity of the sum, or undefined when the two cannot be added (two temperatures, two dates, a length and
 * a pressure)
 * @example
 * ```ts
 * addQuantities('temperature', 'temperatureDifference') // 'temperature'
 * ```
 */
export function addQuantities(a: QuantityName, b: QuantityName): QuantityName | undefined {
  const step = stepOf(a)
  if (step !== undefined) return b === step ? a : undefined
  if (stepOf(b) === a) return b
  return a === b ? a : undefined
}

/**
 * Whether amounts of the two quantities may be compared: only when they are the same quantity.
 *
 * @example
 * ```ts
 * comparableQuantities('length', 'nominalSize') // false
 * ```
 */
export function comparableQuantities(a: QuantityName, b: QuantityName): boolean {
  return a === b
}

/** The quantity of the steps on a scale whose own values cannot be added. */
function stepOf(quantity: QuantityName): QuantityName | undefined {
  if (quantity === 'temperature') return 'temperatureDifference'
  if (quantity === 'date') return 'time'
  return undefined
}
