/**
 * Where a falling function crosses zero; the end nearer to it where it does not cross between the bounds.
 *
 * Halving: never diverges, and eighty steps use up every digit.
 *
 * @example
 * fallingRoot((x) => 2 - x, 0, 10) // 2
 */
export function fallingRoot(of: (x: number) => number, low: number, high: number): number {
  const bounds = { low, high }
  for (let step = 0; step < 80; step++) {
    const middle = (bounds.low + bounds.high) / 2
    bounds[of(middle) > 0 ? 'low' : 'high'] = middle
  }
  return (bounds.low + bounds.high) / 2
}
