import { compareNumbers } from './compare.js'
import { decimalText } from './decimal-text.js'

const finestDivision = 64
const mostDecimals = 12

/** A pipe size as it is called out: `3/4`, `1-1/4`, `2`; decimals only where no fraction of an inch fits. */
export function printNominalSize(size: number, decimals: number): string {
  const nearest = Math.round(size * finestDivision) / finestDivision
  const fraction = compareNumbers(size, nearest) === 0 ? fractionText(nearest) : undefined
  return fraction ?? decimalsOffAnyFraction(size, decimals)
}

/** The size as a whole number and a reduced fraction, or undefined when it is no multiple of 1/64. */
export function fractionText(size: number): string | undefined {
  const parts = size * finestDivision
  if (!Number.isSafeInteger(parts) || parts < 0) return undefined
  const whole = Math.floor(size)
  const rest = parts - whole * finestDivision
  if (rest === 0) return String(whole)
  const divisor = largestPowerOfTwoIn(rest)
  const fraction = `${rest / divisor}/${finestDivision / divisor}`
  return whole === 0 ? fraction : `${whole}-${fraction}`
}

// 0.7501 must not be rounded to 0.75 and look like 3/4.
function decimalsOffAnyFraction(size: number, decimals: number): string {
  const text = decimalText(size, decimals)
  const looksLikeFraction = Number.isInteger(Number(text) * finestDivision)
  return looksLikeFraction && decimals < mostDecimals ? decimalsOffAnyFraction(size, decimals + 1) : text
}

function largestPowerOfTwoIn(parts: number): number {
  return parts & -parts
}
