import type { Event, EventHandler } from 'json-rules-engine'

/** One comparison in the grammar of json-rules-engine. `path` is refused: a fact is named itself. */
export interface HostLeaf {
  /** As our rules write it (`boiler.mawp`, `ventRun.appliance.work`, `site.snowLine`), or a fact of the host's. */
  readonly fact: string
  /** One of json-rules-engine's, decorated or not, or the host's own. */
  readonly operator: string
  /** A number in SI, a word, a list, or `{ fact: ... }`. */
  readonly value: unknown
  /** For facts of the host's only. */
  readonly params?: Readonly<Record<string, unknown>>
  readonly priority?: number
  readonly name?: string
}

/** A condition tree in the grammar of json-rules-engine. Groups are never empty. */
export type HostCondition =
  | HostLeaf
  | { readonly all: readonly HostCondition[]; readonly name?: string; readonly priority?: number }
  | { readonly any: readonly HostCondition[]; readonly name?: string; readonly priority?: number }
  | { readonly not: HostCondition; readonly name?: string; readonly priority?: number }
  | { readonly condition: string; readonly name?: string; readonly priority?: number }

/**
 * A rule of the host's own: a plain object of json-rules-engine, asked of every listed thing of a kind as ours are. It
 * sees what is stated, nothing assumed; what is not known exactly is missing to it, and a comparison with it cannot be told.
 *
 * @example
 * ```ts
 * const rule: HostRule = {
 *   name: 'shop/low-limit',
 *   of: 'boiler',
 *   conditions: { all: [{ fact: 'boiler.mawp', operator: 'lessThan', value: 206843 }] },
 *   event: { type: 'low-limit' },
 * }
 * ```
 */
export interface HostRule {
  /** Unlike every other name, those of the rulebook included. */
  readonly name: string
  /** Kind, family or singleton that it is asked of. */
  readonly of: string
  readonly conditions: HostCondition
  /** Any type but `success`, `failure` and `verdict`, which the engine tells of itself. */
  readonly event: Readonly<Event>
  /** Higher is asked sooner; ours have 1. */
  readonly priority?: number
  readonly onSuccess?: EventHandler
  readonly onFailure?: EventHandler
}
