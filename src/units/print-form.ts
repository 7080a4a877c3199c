import { isAtLeast } from './compare.js'
import { printDate } from './date.js'
import { decimalText } from './decimal-text.js'
import type { PrintStep, Unit } from './measured-quantity.js'
import { printNominalSize } from './nominal-size.js'
import type { QuantityName, UnitSystem } from './quantity.js'
import { type MeasuredName, measuredQuantities } from './unit-tables.js'

const plainDecimals = 2

/** Writes one amount for reading, with more decimals than usual where asked. */
export type PrintForm = (value: number, moreDecimals: number) => string

/** How amounts of this magnitude are printed. */
export function printForm(quantity: QuantityName, system: UnitSystem, magnitude: number): PrintForm {
  if (quantity === 'date') return printDate
  if (quantity === 'count') return decimalText
  if (quantity === 'number') return (value, more) => decimalText(value, plainDecimals + more)
  const { unit, decimals } = printStep(quantity, system, magnitude)
  if (quantity === 'nominalSize') return (value, more) => printNominalSize(value, decimals + more)
  return (value, more) => `${decimalText(inUnit(value, unit), decimals + more)} ${unit.name}`
}

/** The unit and decimals for this magnitude: the last step it reaches, since steps go upward from nothing. */
export function printStep(quantity: MeasuredName, system: UnitSystem, magnitude: number): PrintStep {
  const [first, ...later] = measuredQuantities[quantity].printed[system]
  return later.findLast(({ from }) => isAtLeast(Math.abs(magnitude), from)) ?? first
}

/** The number that stands before the unit. */
export function inUnit(value: number, unit: Unit): number {
  return value / unit.factor + unit.zero
}
