import { readNumber } from './number-text.js'
import { type ParsedQuantity, point, refusal } from './parsed-quantity.js'

const longestCount = 15

/** Reads a whole number written in bare digits. */
export function parseCount(text: string): ParsedQuantity {
  if (!/^\d+$/.test(text)) return refusal(`"${text}" is not a count; write a whole number in digits`, digitsOf(text))
  if (text.length > longestCount) return refusal(`"${text}" is more than anyone can count`)
  return point(Number(text))
}

function digitsOf(text: string): string | undefined {
  const number = readNumber(text)
  if (!number.ok || !Number.isSafeInteger(number.value) || number.value < 0) return undefined
  const digits = String(number.value)
  return digits.length > longestCount ? undefined : digits
}
