import { compareNumbers } from './compare.js'
import { decimalText } from './decimal-text.js'
import { inUnit, type PrintForm, printForm } from './print-form.js'
import type { QuantityName, UnitSystem } from './quantity.js'
import { UnitError } from './unit-error.js'
import { findUnit, type MeasuredName } from './unit-tables.js'

const mostMoreDecimals = 30

/**
 * Writes an amount for reading: `16 psi`, `140 F`, `3/4`, `2024-07-01`, `95 %`. It is rounded; a small amount
 * keeps two digits, down to a millionth of the unit.
 * Lengths are in inches below 10 ft and in feet from there on; areas, air volumes, metric sizes, heat rates and times
 * change units in the same manner.
 *
 * @param value the amount in the unit its quantity is held in; an infinite one is printed as no limit
 * @throws UnitError with code `not-a-number`
 * @example
 * ```ts
 * printQuantity(si('pressure', '16 psi'), 'pressure', 'ip') // '16 psi'
 * printQuantity(si('pressure', '16 psi'), 'pressure', 'si') // '110.3 kPa'
 * ```
 */
export function printQuantity(value: number, quantity: QuantityName, system: UnitSystem): string {
  return printAmount(value, printForm(quantity, system, value), 0)
}

/**
 * Writes two amounts that are being compared, in one unit and with as many decimals as it takes to tell them apart.
 * Amounts that {@link compareNumbers} calls equal are printed the same.
 *
 * @throws UnitError with code `not-a-number`
 * @example
 * ```ts
 * printPair(si('length', '11.98 in'), si('length', '12 in'), 'length', 'ip') // ['11.98 in', '12 in']
 * ```
 */
export function printPair(a: number, b: number, quantity: QuantityName, system: UnitSystem): [string, string] {
  const form = printForm(quantity, system, largerMagnitude(a, b))
  if (compareNumbers(a, b) === 0) return [printAmount(a, form, 0), printAmount(a, form, 0)]
  for (let more = 0; more <= mostMoreDecimals; more++) {
    const pair: [string, string] = [printAmount(a, form, more), printAmount(b, form, more)]
    if (pair[0] !== pair[1]) return pair
  }
  return [String(a), String(b)]
}

/**
 * Writes an amount in a unit of the caller's choice, where the usual one does not suit: gas pressures in `in wc`, gas
 * flows in `cfh`, loads in `MBH`.
 *
 * @param unitText any spelling of a unit of the quantity
 * @param decimals at most so many; a small amount keeps two digits
 * @throws UnitError with code `unwritable-quantity` when the quantity has no such unit, `not-a-number`
 * @example
 * ```ts
 * printIn(si('pressure', '7 in wc'), 'pressure', 'in wc', 2) // '7 in wc'
 * ```
 */
export function printIn(value: number, quantity: MeasuredName, unitText: string, decimals: number): string {
  const unit = findUnit(unitText, quantity)
  if (unit === undefined) throw new UnitError('unwritable-quantity', `"${unitText}" is no unit of ${quantity}`)
  return printAmount(value, (amount) => `${decimalText(inUnit(amount, unit), decimals)} ${unit.name}`, 0)
}

function printAmount(value: number, form: PrintForm, moreDecimals: number): string {
  if (Number.isNaN(value)) throw new UnitError('not-a-number', 'what is not a number cannot be printed')
  if (value === Infinity) return 'no upper limit'
  if (value === -Infinity) return 'no lower limit'
  return form(value, moreDecimals)
}

function largerMagnitude(a: number, b: number): number {
  const finite = [a, b].filter(Number.isFinite).map(Math.abs)
  return Math.max(0, ...finite)
}
