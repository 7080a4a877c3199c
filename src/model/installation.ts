import type { Entry } from './entry.js'
import type { Model } from './model.js'
import type { Phase } from './phase.js'
import type { Thing } from './thing.js'

/** Two things said that cannot both be true. */
export interface Contradiction {
  readonly code:
    'more-listed' | 'answer-against-trace' | 'equipment-against-entry' | 'work-against-kept' | 'flows-collide'
  readonly subject: string
  readonly fact: string
  readonly message: string
}

/** An official's written acceptance of one departure, as read. */
export interface ApprovedModification {
  readonly rule: string
  readonly subject: string
  /** Condition leaves by fact: `{ 'ventTermination.heightAboveGrade': { atLeast: '34 in' } }`. */
  readonly accepts: Readonly<Record<string, Readonly<Record<string, string>>>>
  readonly by: string
  readonly evidence: readonly string[]
  readonly expires?: Entry
  readonly pointer: string
}

/** The whole document as read: frozen plain data, values in SI, nothing added that was not said. */
export interface Installation {
  readonly model: Model
  readonly name?: string
  readonly phase?: Phase
  readonly units: 'ip' | 'si'
  /** Everything with an id, parts and singletons included. */
  readonly things: ReadonlyMap<string, Thing>
  readonly ofKind: ReadonlyMap<string, readonly Thing[]>
  /** How many listed things `all` counts: components, lines, zones, spaces, fixtures, readings, tests. */
  readonly total: number
  /** Stated counts by kind, family, `states` or `all`; `none` is a count of zero. */
  readonly counts: ReadonlyMap<string, Entry>
  readonly removed: readonly Thing[]
  readonly approved: readonly ApprovedModification[]
  readonly contradictions: readonly Contradiction[]
}
