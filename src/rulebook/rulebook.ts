import type { Catalogue } from '../facts/index.js'
import type { Model, Problem } from '../model/index.js'
import type { Authority, Rule } from './rule.js'
import type { SourceData } from './rule-data.js'

/** Rule sets, plugins and overlays, compiled once. Frozen, printable, knows no house. */
export interface Rulebook {
  readonly model: Model
  readonly facts: Catalogue
  readonly rules: readonly Rule[]
  readonly rulesById: ReadonlyMap<string, Rule>
  readonly sources: ReadonlyMap<string, SourceData>
  readonly ruleSets: readonly { readonly name: string; readonly version: string }[]
  readonly overlays: readonly Authority[]
  /** Nothing wrong, but worth a look: a change that can never apply, a rule that keeps towns out. */
  readonly warnings: readonly Problem[]
  /** SHA-256 over everything it was made of, in hexadecimal. */
  readonly hash: string
}
