/** A number at the start of a text, and what follows it. */
export type NumberText =
  | {
      readonly ok: true
      readonly value: number
      readonly text: string
      readonly isFraction: boolean
      readonly rest: string
    }
  | { readonly ok: false; readonly problem: string }

const wholeAndFraction = /^([+-]?)(?:(\d+)(?: ?- ?| ))?(\d+)\/(\d+)/
const decimal = /^([+-]?)(\d[\d,]*)?(\.\d+)?(e[+-]?\d+)?/i
const groupedInThrees = /^\d{1,3}(?:,\d{3})+$/
const moreNumber = /^[\d.,/+-]/

/**
 * Reads the number a plain text starts with: `18`, `1.5`, `.5`, `75,000`, `1e3`, `3/4`, `1-1/4`, `1 1/4`. The sign is
 * that of the whole number. Text that goes on like a number (`5-6`, `1.2.3`) is not read as its first half.
 */
export function readNumber(text: string): NumberText {
  const number = readFraction(text) ?? readDecimal(text)
  if (number.ok && moreNumber.test(number.rest)) return problem('is not one number')
  return number
}

function readFraction(text: string): NumberText | undefined {
  const match = wholeAndFraction.exec(text)
  if (match === null) return undefined
  const [all, sign, whole, top, bottom] = match
  const numerator = Number(top)
  const denominator = Number(bottom)
  if (denominator === 0) return problem('has a fraction with nothing below the line')
  if (whole !== undefined && numerator >= denominator) return problem('has a fraction that is more than one')
  const size = Number(whole ?? 0) + numerator / denominator
  return found(text, all, sign === '-' ? -size : size, true)
}

function readDecimal(text: string): NumberText {
  const match = decimal.exec(text)
  if (match === null) return problem('has no number')
  const [all, sign, whole, decimals, power] = match
  if (whole === undefined && decimals === undefined) return problem('has no number')
  if (whole?.includes(',') && !groupedInThrees.test(whole)) return problem('has a comma where no thousands end')
  const size = Number(`${whole?.replaceAll(',', '') ?? '0'}${decimals ?? ''}${power ?? ''}`)
  return found(text, all, sign === '-' ? 0 - size : size, false)
}

function found(source: string, text: string, value: number, isFraction: boolean): NumberText {
  return { ok: true, value, text, isFraction, rest: source.slice(text.length).trim() }
}

function problem(what: string): NumberText {
  return { ok: false, problem: what }
}
