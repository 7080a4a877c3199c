import { Rule, type RuleProperties } from 'json-rules-engine'
import type { Listener } from './undeclared.js'

/** A host's rule, read. */
export interface AskedWords {
  readonly of: string
  readonly kinds: readonly string[]
  readonly properties: RuleProperties & { readonly name: string }
  /** Kept out of the stock rule, where one that throws would lose the result that it is told of. */
  readonly handlers: { readonly success: Listener | undefined; readonly failure: Listener | undefined }
}

/** A host's rule that is asked of every listed thing of its kinds. */
export class AskedRule extends Rule {
  readonly of: string
  readonly kinds: readonly string[]
  readonly handlers: AskedWords['handlers']

  constructor({ of, kinds, properties, handlers }: AskedWords) {
    super(properties)
    this.of = of
    this.kinds = kinds
    this.handlers = handlers
  }
}
