import { speak } from '../../findings/index.js'
import type { LeafField } from '../../model/index.js'
import type { Condition, Leaf, Operator, Value } from '../../rulebook/index.js'
import { code, orList } from './markdown.js'

/** A condition in words, with the names of facts as rules write them: `` `boiler.condensing` is yes ``. */
export function conditionWords(condition: Condition): string {
  switch (condition.type) {
    case 'leaf':
      return leafWords(condition)
    case 'all':
      return condition.of.map(inner).join(' and ')
    case 'any':
      return condition.of.map(inner).join(' or ')
    case 'not':
      return `not (${condition.of.map(conditionWords).join('')})`
    default:
      return neverCondition(condition)
  }
}

function inner(condition: Condition): string {
  const words = conditionWords(condition)
  return condition.type === 'all' || condition.type === 'any' ? `(${words})` : words
}

const verbs: Readonly<Record<Operator, string>> = {
  is: 'is',
  isNot: 'is not',
  oneOf: 'is',
  noneOf: 'is neither',
  atLeast: 'is at least',
  atMost: 'is at most',
  moreThan: 'is more than',
  lessThan: 'is less than',
  between: 'is between',
  includes: 'includes',
  excludes: 'does not include',
}

function leafWords({ fact, operator, values }: Leaf): string {
  const words = values.map((value) => valueWords(value, fact.type))
  const spread = values[0]?.type === 'fact' && (operator === 'oneOf' || operator === 'noneOf') ? 'one of those in ' : ''
  const verb = spread !== '' && operator === 'noneOf' ? 'is not' : verbs[operator]
  return `${code(fact.path)} ${verb} ${spread}${words.join(' and ')}`
}

/** A value in words: text as written, choices as they are spoken, sums as sums. */
export function valueWords(value: Value, type: LeafField): string {
  switch (value.type) {
    case 'constant':
      return value.answer.state === 'list'
        ? orList(value.answer.members.map((member) => speak(member, type)))
        : speak(value.text, type)
    case 'fact':
      return code(value.fact.path)
    case 'sum':
      return value.of.map((one) => valueWords(one, type)).join(' + ')
    case 'largest':
    case 'smallest':
      return `the ${value.type} of ${value.of.map((one) => valueWords(one, type)).join(', ')}`
    case 'times':
      return `${value.factor} × ${valueWords(value.of, type)}`
    default:
      return neverValue(value)
  }
}

function neverCondition(condition: never): never {
  throw new TypeError(`no such condition: ${JSON.stringify(condition)}`)
}

function neverValue(value: never): never {
  throw new TypeError(`no such value: ${JSON.stringify(value)}`)
}
