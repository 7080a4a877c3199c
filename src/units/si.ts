import { parseQuantity } from './parse-quantity.js'
import type { QuantityName, SI } from './quantity.js'
import { UnitError } from './unit-error.js'

/**
 * Reads an amount that is known to be well written, such as a constant in code.
 *
 * @param quantity what the text states
 * @param text what {@link parseQuantity} reads; a date must name its day
 * @returns the amount in the unit its quantity is held in, branded with the quantity
 * @throws UnitError with code `unreadable-quantity`
 * @example
 * ```ts
 * si('pressure', '1 bar') // 100000
 * ```
 */
export function si<Q extends QuantityName>(quantity: Q, text: string): SI<Q> {
  const parsed = parseQuantity(text, quantity)
  if (!parsed.ok) throw new UnitError('unreadable-quantity', parsed.message, parsed.suggestion)
  if (parsed.low !== parsed.high) throw new UnitError('unreadable-quantity', `"${text}" names many days, not one`)
  return parsed.low as SI<Q>
}
