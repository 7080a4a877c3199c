import type { AnnotatedCondition } from './fold-result.js'

/** What a rule of the host's comes to for one thing. */
export interface HostResult {
  readonly rule: string
  readonly subject: string
  /** In three values, whatever the stock engine makes of missing facts. */
  readonly result: 'holds' | 'does not hold' | 'cannot be told'
  readonly event: { readonly type: string; readonly params?: Readonly<Record<string, unknown>> }
  /** The tree with what was compared, as json-rules-engine annotates it. */
  readonly conditions: AnnotatedCondition
}
