import { foot, inch } from './conversion-factors.js'
import { readNumber } from './number-text.js'
import { type ParsedQuantity, point, refusal } from './parsed-quantity.js'
import { findUnit } from './unit-tables.js'

const wholeFeet = /^(\d{1,9})( ?)('|(?:ft|feet|foot)\.?)( ?-? ?)(?=[\d.])/i

/** Reads `5' 6"`, `5'-6 1/2"`, `5 ft 6 in`; undefined when the text is not made that way. */
export function parseFeetAndInches(text: string): ParsedQuantity | undefined {
  const match = wholeFeet.exec(text)
  if (match === null) return undefined
  const [start, feet, , mark, gap] = match
  const inches = readNumber(text.slice(start.length))
  if (!inches.ok) return refusal(`"${text}" ${inches.problem}; feet and inches are written 5 ft 6 in`)
  if (inches.rest === '') {
    // "5 ft2" is an area, "5' 2" a length with its last mark forgotten.
    if (mark !== "'" && gap === '') return undefined
    return refusal(`"${text}" does not say what the last number counts`, `${feet} ft ${inches.text} in`)
  }
  if (findUnit(inches.rest, 'length')?.name !== 'in') return undefined
  if (inches.value >= 12) return refusal(`"${text}" has a foot or more of inches`)
  return point(Number(feet) * foot + inches.value * inch)
}
