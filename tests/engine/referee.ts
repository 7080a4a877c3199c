import { Engine, type RuleResultSerializable } from 'json-rules-engine'
import type { StockConditions } from '../../src/engine/index.js'

// The referee is json-rules-engine as it is published: it decides what conditions mean, not we.

/** Runs one tree on an untouched engine. */
export async function referee({ conditions, facts }: StockConditions): Promise<RuleResultSerializable> {
  const engine = new Engine([{ conditions, event: { type: 'held' } }], { allowUndefinedFacts: true })
  const { results, failureResults } = await engine.run({ ...facts })
  return (results[0] ?? failureResults[0])!.toJSON(false)
}

/** Runs many, one after another, in their order. */
export async function refereeAll(trees: readonly StockConditions[]): Promise<readonly RuleResultSerializable[]> {
  const results: RuleResultSerializable[] = []
  for (const tree of trees) results.push(await referee(tree))
  return results
}
