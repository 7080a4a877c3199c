/** A printed point: where, and what is printed there. */
export type Point = readonly [at: number, value: number]

/**
 * Reads a curve between its points along straight lines; before the first and after the last point it stays level, and the
 * reading is not within.
 *
 * @param points one at least, by rising place
 * @example
 * interpolate([[0, 1], [10, 3]], 5) // { value: 2, within: true }
 */
export function interpolate(
  points: readonly Point[],
  at: number,
): { readonly value: number; readonly within: boolean } {
  const [first, last] = [points[0], points.at(-1)]
  if (first === undefined || last === undefined) throw new Error('A curve has no points.')
  if (at < first[0] - noise) return { value: first[1], within: false }
  const above = points.find(([place]) => place >= at - noise)
  if (above === undefined) return { value: last[1], within: false }
  const below = points.findLast(([place]) => place < above[0]) ?? above
  const span = above[0] - below[0]
  const share = span === 0 ? 1 : Math.min(1, (at - below[0]) / span)
  return { value: below[1] + share * (above[1] - below[1]), within: true }
}

/** 180 F stays 180 F after it was turned into kelvins. */
const noise = 1e-9
