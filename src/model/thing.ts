import type { Entry, Standing } from './entry.js'
import type { KindSpec, Medium } from './kind.js'

/** One item of a line's path, in order. */
export type PathItem =
  | { readonly type: 'port'; readonly component: string; readonly port: string }
  | { readonly type: 'through'; readonly component: string; readonly enter: string; readonly leave: string }
  | { readonly type: 'unknown' }

/** Parts under one name of an owner, and how many it is said to have. */
export interface PartList {
  readonly stated?: Entry
  readonly ids: readonly string[]
}

/** Anything with an id that rules can speak of: a component, a part, a line, a space, the site itself. */
export interface Thing {
  /** `RV1`; a part is `VT1/window-east`; a singleton has the name of its section. */
  readonly id: string
  readonly kind: KindSpec
  readonly name?: string
  /** An assumed or template thing counts as not listed wherever a `stop` or `must` is judged. */
  readonly standing: Standing
  /** By field; members of a group are named `pipe.size`. A field without entry is unknown. */
  readonly entries: Readonly<Record<string, Entry>>
  readonly parts: Readonly<Record<string, PartList>>
  /** Id of the thing this is a part of. */
  readonly owner?: string
  /** Evidence for the thing as a whole; it covers each of its entries. */
  readonly evidence: readonly string[]
  /** Lines only. */
  readonly path?: readonly PathItem[]
  readonly medium?: Medium
  readonly pointer: string
  /** Fields written as `unknown`: said to be open, so that nothing said of others fills them. */
  readonly saidUnknown?: readonly string[]
  /** Set on the one more thing, not listed, that a rule is asked of where a count is not complete. */
  readonly unlisted?: true
}
