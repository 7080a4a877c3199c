import { distance } from 'fastest-levenshtein'

/**
 * The known name nearest to a misspelled word, capitals aside; the first of equals. Near means at most two letters
 * wrong, or a third of the word, and at least one letter right.
 *
 * @returns the name as it stands in the list, or undefined when none is near
 * @example
 * ```ts
 * nearestName('reliefvalv', ['boiler', 'reliefValve']) // 'reliefValve'
 * ```
 */
export function nearestName(word: string, names: readonly string[]): string | undefined {
  const wanted = word.toLowerCase()
  let best = Math.min(Math.max(2, Math.floor(word.length / 3)), word.length - 1) + 1
  let nearest: string | undefined
  for (const name of names) {
    // The distance is never below the difference in length: a hostile word of a million letters costs nothing.
    if (Math.abs(name.length - word.length) >= best) continue
    const steps = distance(wanted, name.toLowerCase())
    if (steps >= best) continue
    best = steps
    nearest = name
  }
  return nearest
}
