import { both, either, opposite, type Tri } from '../rulebook/index.js'

/** A condition tree as json-rules-engine annotates it, alive or as JSON. */
export interface AnnotatedCondition {
  readonly all?: readonly AnnotatedCondition[]
  readonly any?: readonly AnnotatedCondition[]
  readonly not?: AnnotatedCondition
  readonly condition?: string
  readonly fact?: string
  readonly value?: unknown
  readonly factResult?: unknown
  readonly valueResult?: unknown
  readonly result?: boolean
}

/**
 * Reads an annotated tree in three values. The stock engine lets `notEqual`, `notIn` and `not` pass on a missing fact; here
 * a comparison with anything missing, and one that was never reached, cannot be told.
 *
 * @returns -1 when it does not hold, 0 when it cannot be told, 1 when it holds
 * @example
 * ```ts
 * foldResult({ all: [{ fact: 'boiler.mawp', operator: 'notEqual', value: 5, result: true }] }) // 0
 * ```
 */
export function foldResult(annotated: AnnotatedCondition): Tri {
  if (annotated.all !== undefined) return both(annotated.all.map(foldResult))
  if (annotated.any !== undefined) return either(annotated.any.map(foldResult))
  if (annotated.not !== undefined) return opposite(foldResult(annotated.not))
  return foldLeaf(annotated)
}

function foldLeaf({ result, factResult, valueResult }: AnnotatedCondition): Tri {
  if (result === undefined || isMissing(factResult) || isMissing(valueResult)) return 0
  return result ? 1 : -1
}

function isMissing(value: unknown): boolean {
  return value === undefined || value === null || Number.isNaN(value)
}
