import { readNumber } from './number-text.js'
import { type ParsedQuantity, point, refusal } from './parsed-quantity.js'

const absurd = 1e15

/** Reads a plain number, such as a pH or an exponent, written in decimals and without a unit. */
export function parsePlainNumber(text: string): ParsedQuantity {
  const number = readNumber(text)
  if (!number.ok) return refusal(`"${text}" ${number.problem}; a plain number is written in digits`)
  if (number.isFraction) return refusal(`"${text}" has one number over another; a plain number is written in decimals`)
  if (number.rest !== '')
    return refusal(`"${text}" has a unit; a plain number is written without one`, number.text.replaceAll(',', ''))
  if (!Number.isFinite(number.value) || Math.abs(number.value) > absurd)
    return refusal(`"${text}" is beyond anything built`)
  return point(number.value)
}
