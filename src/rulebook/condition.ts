import type { Answer, ResolvedFact, View } from '../facts/index.js'
import type { Thing } from '../model/index.js'
import { compare, type Operator } from './operators.js'
import { both, either, opposite, type Tri } from './truth.js'
import { factsIn, valueOf, type Value } from './value.js'

/** One comparison of a fact with a value. */
export interface Leaf {
  readonly type: 'leaf'
  readonly fact: ResolvedFact
  readonly operator: Operator
  /** Two for `between`, else one. */
  readonly values: readonly Value[]
}

/** A tree of comparisons, resolved once when the rulebook opens. */
export type Condition =
  | Leaf
  | { readonly type: 'all' | 'any'; readonly of: readonly Condition[] }
  | { readonly type: 'not'; readonly of: readonly [Condition] }

/** A judged comparison with both sides as they were. */
export interface JudgedLeaf {
  readonly type: 'leaf'
  readonly truth: Tri
  readonly leaf: Leaf
  readonly left: Answer
  readonly right: readonly Answer[]
}

/** A condition with its truth, down to every comparison: the evidence of a verdict. */
export type Judged =
  JudgedLeaf | { readonly type: 'all' | 'any' | 'not'; readonly truth: Tri; readonly of: readonly Judged[] }

/** Judges a condition for one subject in one view. */
export function judgeCondition(condition: Condition, view: View, subject: Thing): Judged {
  if (condition.type === 'leaf') return judgeLeaf(condition, view, subject)
  const of = condition.of.map((one) => judgeCondition(one, view, subject))
  return { type: condition.type, truth: truthOf(condition.type, of), of }
}

function judgeLeaf(leaf: Leaf, view: View, subject: Thing): JudgedLeaf {
  const left = leaf.fact.ask(view, subject)
  const right = leaf.values.map((value) => valueOf(value, view, subject))
  return { type: 'leaf', truth: compare(leaf.operator, left, right), leaf, left, right }
}

function truthOf(type: 'all' | 'any' | 'not', of: readonly Judged[]): Tri {
  const truths = of.map((one) => one.truth)
  switch (type) {
    case 'all':
      return both(truths)
    case 'any':
      return either(truths)
    case 'not':
      return opposite(truths[0] ?? 0)
    default:
      return neverGroup(type)
  }
}

/** Every comparison in a condition. */
export function leavesIn(condition: Condition): readonly Leaf[] {
  return condition.type === 'leaf' ? [condition] : condition.of.flatMap(leavesIn)
}

/** Every fact that a condition asks, values included. */
export function factsOf(condition: Condition): readonly ResolvedFact[] {
  return leavesIn(condition).flatMap((leaf) => [leaf.fact, ...leaf.values.flatMap(factsIn)])
}

/** Judged comparisons that are not decided and could still change the whole. */
export function openLeaves(judged: Judged): readonly JudgedLeaf[] {
  if (judged.truth !== 0) return []
  return judged.type === 'leaf' ? [judged] : judged.of.flatMap(openLeaves)
}

export function allLeaves(judged: Judged): readonly JudgedLeaf[] {
  return judged.type === 'leaf' ? [judged] : judged.of.flatMap(allLeaves)
}

function neverGroup(type: never): never {
  throw new TypeError(`no such group: ${String(type)}`)
}
