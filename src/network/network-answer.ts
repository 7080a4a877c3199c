import type { MissingFact } from './told.js'

/** No, cannot be told, yes. */
export type Tri = -1 | 0 | 1

/** What a thing may do to a way: it can be shut, lets through one way only, strains or reduces, leads into another medium, or is barred by name. */
export type Blocking = 'closes' | 'checks' | 'restricts' | 'crosses' | 'barred'

/** An answer about the drawn lines, with the way that shows it. */
export interface NetworkAnswer {
  readonly truth: Tri
  /** Stations of a way that a person can walk: `['B1.supply', 'ISO1', 'RV1.inlet']`. `unknown` stands where nobody knows what follows. */
  readonly witness: readonly string[]
  /** What would decide, nearest first. Empty unless the truth is 0. */
  readonly missing: readonly MissingFact[]
  /** The first thing on the witness that blocks it, where a blocked way is shown. */
  readonly blockedBy?: string
  /** What it does to the way. */
  readonly blockedHow?: Blocking
  /** How many passages were looked at: the cost of the answer. */
  readonly visited: number
}

export function opposite(truth: Tri): Tri {
  switch (truth) {
    case 1:
      return -1
    case -1:
      return 1
    case 0:
      return 0
    default:
      return neverTruth(truth)
  }
}

function neverTruth(truth: never): never {
  throw new TypeError(`no such truth: ${String(truth)}`)
}
