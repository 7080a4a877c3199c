import type { ConditionProperties, NestedCondition } from 'json-rules-engine'
import { isSettled, type Answer, type View } from '../../src/facts/index.js'
import type { Thing } from '../../src/model/index.js'
import { valueOf, type Condition, type Leaf, type Operator, type Value } from '../../src/rulebook/index.js'

/** A value or fact that a stock condition names, and how it is obtained for a subject. */
export type Obtain = (view: View, subject: Thing) => unknown

/** A condition of ours in the words of the untouched engine. What it names besides constants is put into `facts`. */
export function stockCondition(condition: Condition, facts: Map<string, Obtain>): NestedCondition {
  switch (condition.type) {
    case 'all':
      return { all: condition.of.map((one) => stockCondition(one, facts)) }
    case 'any':
      return { any: condition.of.map((one) => stockCondition(one, facts)) }
    case 'not':
      return { not: stockCondition(condition.of[0], facts) }
    case 'leaf':
      return stockLeaf(condition, facts)
    default:
      return condition satisfies never
  }
}

const stockOperators: Readonly<Record<Exclude<Operator, 'between'>, string>> = {
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
}

function stockLeaf({ fact, operator, values }: Leaf, facts: Map<string, Obtain>): NestedCondition {
  facts.set(fact.path, (view, subject) => plain(fact.ask(view, subject)))
  const [first, second] = values.map((value) => stockValue(value, facts))
  if (operator === 'between') return { all: [leafOf(fact.path, 'atLeast', first), leafOf(fact.path, 'atMost', second)] }
  return leafOf(fact.path, operator, first)
}

function leafOf(fact: string, operator: Exclude<Operator, 'between'>, value: unknown): ConditionProperties {
  return { fact, operator: stockOperators[operator], value }
}

/** Constants stay; everything else becomes a fact of its own, since the engine compares with a fact but does no sums. */
function stockValue(value: Value, facts: Map<string, Obtain>): unknown {
  if (value.type === 'constant') return plain(value.answer)
  const name = nameOf(value)
  facts.set(name, (view, subject) => plain(valueOf(value, view, subject)))
  return { fact: name }
}

function nameOf(value: Value): string {
  switch (value.type) {
    case 'constant':
      return value.text
    case 'fact':
      return value.fact.path
    case 'times':
      return `${value.factor} times ${nameOf(value.of)}`
    case 'sum':
    case 'largest':
    case 'smallest':
      return `${value.type} of ${value.of.map(nameOf).join(', ')}`
    default:
      return value satisfies never
  }
}

/** An answer as the engine knows values; what is not settled is missing there. */
function plain(answer: Answer): unknown {
  if (!isSettled(answer)) return undefined
  switch (answer.state) {
    case 'number':
      return answer.low
    case 'word':
      return answer.word
    case 'list':
      return answer.members
    case 'unknown':
      return undefined
    default:
      return answer satisfies never
  }
}
