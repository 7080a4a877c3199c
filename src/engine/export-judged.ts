import type { TopLevelCondition } from 'json-rules-engine'
import { isSettled, type Answer } from '../facts/index.js'
import { compareNumbers } from '../units/index.js'
import type { Judged, JudgedLeaf, Operator } from '../rulebook/index.js'
import { exactValue, type ExactValue } from './exact-value.js'

/** A condition in the grammar of json-rules-engine, with the facts that it needs; a fact that is not there is missing. */
export interface StockConditions {
  readonly conditions: TopLevelCondition
  readonly facts: Readonly<Record<string, ExactValue>>
}

interface StockLeaf {
  readonly fact: string
  readonly operator: string
  readonly value: ExactValue | null
}

type StockTree = StockLeaf | { all: StockTree[] } | { any: StockTree[] } | { not: StockTree }

const stockOperators = {
  is: 'equal',
  isNot: 'notEqual',
  oneOf: 'in',
  noneOf: 'notIn',
  atLeast: 'greaterThanInclusive',
  atMost: 'lessThanInclusive',
  moreThan: 'greaterThan',
  lessThan: 'lessThan',
  includes: 'contains',
  excludes: 'doesNotContain',
} as const satisfies Readonly<Record<Exclude<Operator, 'between'>, string>>

/**
 * Writes a judged condition for an engine that knows nothing of ours: facts as found, values worked out beforehand. A
 * bound that decides its comparison stands as one amount within it; a bound that does not is missing.
 */
export function exportJudged(judged: Judged): StockConditions {
  const facts = new Map<string, ExactValue>()
  const tree = exportTree(judged, facts)
  return { conditions: 'fact' in tree ? { all: [tree] } : tree, facts: Object.fromEntries(facts) }
}

function exportTree(judged: Judged, facts: Map<string, ExactValue>): StockTree {
  if (judged.type === 'leaf') return exportLeaf(judged, facts)
  const { type } = judged
  const of = judged.of.map((one) => exportTree(one, facts))
  switch (type) {
    case 'all':
      return { all: of }
    case 'any':
      return { any: of }
    case 'not':
      return { not: of[0] ?? { any: [] } }
    default:
      return neverGroup(type)
  }
}

function exportLeaf({ leaf, left, right, truth }: JudgedLeaf, facts: Map<string, ExactValue>): StockTree {
  const decided = truth !== 0
  const sides = right.map((one) => standIn(one, decided))
  const compare = (operator: string, value: ExactValue | undefined): StockLeaf =>
    exportComparison(
      { path: leaf.fact.path, left: standIn(left, decided), exact: isSettled(left) },
      { operator, value },
      facts,
    )
  if (leaf.operator !== 'between') return compare(stockOperators[leaf.operator], sides[0])
  return { all: [compare(stockOperators.atLeast, sides[0]), compare(stockOperators.atMost, sides[1])] }
}

/** A value that compares like the answer does. */
function standIn(answer: Answer, decided: boolean): ExactValue | undefined {
  const exact = exactValue(answer)
  if (exact !== undefined || !decided) return exact
  if (answer.state === 'number') return Number.isFinite(answer.low) ? answer.low : answer.high
  return answer.state === 'list' ? [...answer.members] : undefined
}

interface LeftSide {
  readonly path: string
  readonly left: ExactValue | undefined
  readonly exact: boolean
}

interface RightSide {
  readonly operator: string
  readonly value: ExactValue | undefined
}

/** A fact that is not simply what was found gets a name of its own, so that no other comparison sees it. */
function exportComparison(
  { path, left, exact }: LeftSide,
  { operator, value }: RightSide,
  facts: Map<string, ExactValue>,
): StockLeaf {
  if (left === undefined || value === undefined) return { fact: `${path} (missing)`, operator, value: value ?? [] }
  const even =
    typeof left === 'number' && typeof value === 'number' && left !== value && compareNumbers(left, value) === 0
  const plain = exact && !even
  const fact = plain ? path : `${path} (${facts.size})`
  facts.set(fact, even ? value : left)
  return { fact, operator, value }
}

function neverGroup(type: never): never {
  throw new TypeError(`no such group: ${String(type)}`)
}
