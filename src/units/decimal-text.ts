const mostPlacesUnasked = 6
const mostPlaces = 100

/**
 * A number with at most so many decimals, without trailing zeros. A number that would lose all but its first digit
 * keeps two, so that a small amount is not printed as none.
 */
export function decimalText(value: number, decimals: number): string {
  const places = Math.max(decimals, Math.min(placesForTwoDigits(value), mostPlacesUnasked))
  return withoutTrailingZeros(value.toFixed(Math.min(places, mostPlaces)))
}

/** The shortest decimal text that `accepts` takes, or all digits there are. */
export function shortestText(value: number, accepts: (candidate: number) => boolean): string {
  for (let places = 0; places <= 12; places++) {
    const text = value.toFixed(places)
    if (accepts(Number(text))) return withoutTrailingZeros(text)
  }
  return String(value)
}

function placesForTwoDigits(value: number): number {
  return value === 0 ? 0 : 1 - Math.floor(Math.log10(Math.abs(value)))
}

function withoutTrailingZeros(text: string): string {
  if (text.includes('e')) return text
  const trimmed = text.includes('.') ? text.replace(/\.?0+$/, '') : text
  return trimmed === '-0' ? '0' : trimmed
}
