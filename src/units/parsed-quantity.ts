import { isLess, isMore } from './compare.js'
import type { MeasuredQuantity, Unit } from './measured-quantity.js'

/**
 * What came of reading a text: the amount in the unit its quantity is held in, or what is wrong with the text and,
 * where it can be guessed, the text to write instead. `low` and `high` are equal except for dates of year or month
 * precision.
 */
export type ParsedQuantity =
  | { readonly ok: true; readonly low: number; readonly high: number }
  | { readonly ok: false; readonly message: string; readonly suggestion?: string }

const absurd = 1e15

/** The amount that a number in a unit comes to, refused where physics forbids it. */
export function amount(text: string, number: number, unit: Unit, quantity: MeasuredQuantity): ParsedQuantity {
  const value = (number - unit.zero) * unit.factor
  if (!Number.isFinite(value) || isMore(Math.abs(value), absurd)) return refusal(`"${text}" is beyond anything built`)
  if (isLess(value, quantity.least)) return refusal(`"${text}" cannot be: ${quantity.leastBecause}`)
  return point(value)
}

/** A single amount. */
export function point(value: number): ParsedQuantity {
  const withoutMinusZero = value + 0
  return { ok: true, low: withoutMinusZero, high: withoutMinusZero }
}

/** A text that cannot be read. */
export function refusal(message: string, suggestion?: string): ParsedQuantity {
  return suggestion === undefined ? { ok: false, message } : { ok: false, message, suggestion }
}
