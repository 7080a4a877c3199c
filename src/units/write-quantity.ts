import { printDate } from './date.js'
import { shortestText } from './decimal-text.js'
import { fractionText } from './nominal-size.js'
import { inUnit, printStep } from './print-form.js'
import type { QuantityName, UnitSystem } from './quantity.js'
import { UnitError } from './unit-error.js'

const backWithin = 1e-14

/**
 * Writes an amount for a file, with all the digits it takes for {@link parseQuantity} to read the same amount back to
 * within one part in 10^12. A date is written as the day it falls in. What {@link parseQuantity} refuses, such as a
 * negative length, is written but not read back.
 *
 * @param value the amount in the unit its quantity is held in
 * @throws UnitError with code `unwritable-quantity` for what is infinite or not a number
 * @example
 * ```ts
 * writeQuantity(si('heatRate', '22 kW'), 'heatRate', 'ip') // '75067.115928815 Btu/h'
 * ```
 */
export function writeQuantity(value: number, quantity: QuantityName, system: UnitSystem): string {
  if (!Number.isFinite(value)) throw new UnitError('unwritable-quantity', `${value} cannot be written as an amount`)
  if (quantity === 'date') return printDate(value)
  if (quantity === 'count') return String(value)
  if (quantity === 'number') return String(value)
  if (quantity === 'nominalSize') return fractionText(value) ?? String(value)
  const { unit } = printStep(quantity, system, value)
  const readsBack = (number: number) =>
    Math.abs((number - unit.zero) * unit.factor - value) <= backWithin * Math.abs(value)
  return `${shortestText(inUnit(value, unit), readsBack)} ${unit.name}`
}
