import { parseCount } from './count.js'
import { parseDate } from './date.js'
import { parseFeetAndInches } from './feet-and-inches.js'
import { parseMeasured } from './parse-measured.js'
import { type ParsedQuantity, refusal } from './parsed-quantity.js'
import { parsePlainNumber } from './plain-number.js'
import { plainText } from './plain-text.js'
import type { QuantityName } from './quantity.js'

const longestText = 80

/**
 * Reads an amount as the trade writes it.
 *
 * Numbers may be decimal, grouped in thousands, in scientific notation or, where rulers and gauges have them, fractions
 * (`3/4`, `1-1/4`, `1 1/4`). Capitals and spaces matter only where they change the meaning. A number without a unit is
 * refused, except for counts, plain numbers and nominal sizes. Dates are `2024`, `2024-07` or `2024-07-01`; a year or month gives its
 * first and last day.
 *
 * @param text what was written; over 80 characters are refused
 * @param quantity what is expected
 * @returns the amount in the unit its quantity is held in (see {@link QuantityName}), or what to write instead; never
 * throws
 * @example
 * ```ts
 * parseQuantity('7" wc', 'pressure') // { ok: true, low: 1743.62237, high: 1743.62237 }
 * parseQuantity('2024-07', 'date') // { ok: true, low: 19905, high: 19935 }
 * parseQuantity('18', 'length')
 * // { ok: false, message: '"18" has no unit; a length is written with in, ft, m, mm or cm', suggestion: '18 in' }
 * ```
 */
export function parseQuantity(text: string, quantity: QuantityName): ParsedQuantity {
  if (text.length > longestText) return refusal(`"${text.slice(0, 20)}..." is too long for an amount`)
  const plain = plainText(text)
  if (quantity === 'date') return parseDate(plain)
  if (quantity === 'count') return parseCount(plain)
  if (quantity === 'number') return parsePlainNumber(plain)
  if (quantity === 'length') return parseFeetAndInches(plain) ?? parseMeasured(plain, quantity)
  return parseMeasured(plain, quantity)
}
