/** How much a failed demand matters, worst first. */
export const severities = ['stop', 'must', 'should', 'advice'] as const
/** Weight of a demand: `stop` (do not fire, do not test), `must`, `should`, `advice`. */
export type Severity = (typeof severities)[number]

/** Why something is demanded. */
export const grounds = ['code', 'listing', 'instructions', 'utility', 'physics', 'practice'] as const
/** What a demand rests on. */
export type Ground = (typeof grounds)[number]

/** How an authority came to ask. */
export const natures = ['adopted-text', 'amendment', 'written-policy', 'verbal-habit'] as const
/** How an authority came to ask. */
export type Nature = (typeof natures)[number]

export function isWorse(a: Severity, b: Severity): boolean {
  return severities.indexOf(a) < severities.indexOf(b)
}

export function worstOf(list: readonly Severity[]): Severity | undefined {
  return severities.find((severity) => list.includes(severity))
}

/** The demands that decide the outcome, and are judged on what is stated only. */
export function isBinding(severity: Severity): boolean {
  return severity === 'stop' || severity === 'must'
}
