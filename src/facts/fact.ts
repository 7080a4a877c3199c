import type { FamilySpec, Installation, KindSpec, LeafField, Thing } from '../model/index.js'
import type { Network } from '../network/index.js'
import type { Answer } from './answer.js'

/** What a fact can be: the same shapes as a field, without groups. */
export type FactType = LeafField

/** Things of a kind, and how many more there may be. */
export interface Listing {
  readonly things: readonly Thing[]
  /** Highest number of things there may be beside those listed; zero when the count is complete. */
  readonly more: number
}

/** What a fact or check may see while it judges one subject: frozen data, no rules, no way back. */
export interface Context {
  readonly subject: Thing
  readonly installation: Installation
  /** Asks a fact of the subject, or of another thing, and records that it was used. */
  readonly ask: (fact: FactHandle | string, of?: Thing) => Answer
  /** A thing by the id that a reference gives. */
  readonly find: (id: string) => Thing | undefined
  /** Everything listed of a kind or family. */
  readonly listed: (kind: KindSpec | FamilySpec | string) => Listing
  /** Parts of the subject, or of another thing, under one name. */
  readonly parts: (name: string, of?: Thing) => Listing
  readonly network: Network
}

/** A named, typed value about one subject that something computes. */
export interface FactHandle {
  readonly name: string
  /** Kind, family or singleton. */
  readonly of: string
  readonly type: FactType
  /** The document may state the answer in place of the drawing. */
  readonly answerable: boolean
  /** Finds the answer for one subject, or what is missing. */
  readonly read: (context: Context) => Answer
}

interface FactWords {
  readonly of: KindSpec | FamilySpec
  readonly type: FactType
  readonly answerable?: boolean
  readonly read: (context: Context) => Answer
}

/**
 * Declares a derived fact.
 *
 * @example
 * const gallonsOver = fact('gallonsOver', { of: expansionTank, type: quantity('volume'), read: ({ ask }) => ask('volume') })
 */
export function fact(name: string, words: FactWords): FactHandle {
  return Object.freeze({ answerable: false, ...words, name, of: words.of.name })
}
