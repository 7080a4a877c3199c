import type { RuleResult, RuleResultSerializable } from 'json-rules-engine'

type Parts = Pick<RuleResultSerializable, 'name' | 'event' | 'priority' | 'conditions'> & { readonly result: boolean }

/**
 * A result as listeners of json-rules-engine know it. Unlike the stock one it survives `JSON.stringify`, which hands the
 * key to `toJSON` and would get text within text.
 */
export function ruleResult(parts: Parts): RuleResult {
  const plain = { ...parts }
  const toJSON = (...words: readonly unknown[]): unknown =>
    words.length === 0 || words[0] === true ? JSON.stringify(plain) : plain
  return { ...plain, toJSON } as unknown as RuleResult
}
