import { spokenOperators, type Condition, type Leaf, type Value } from '../rulebook/index.js'

/** A condition as a sentence: "venting is one of draft hood, sealed and input is at least 10,000 Btu/h". Facts keep their names. */
export function conditionWords(condition: Condition, within = false): string {
  switch (condition.type) {
    case 'leaf':
      return leafWords(condition)
    case 'not':
      return `not (${conditionWords(condition.of[0])})`
    case 'all':
    case 'any': {
      const words = condition.of
        .map((one) => conditionWords(one, true))
        .join(condition.type === 'all' ? ' and ' : ' or ')
      return within && condition.of.length > 1 ? `(${words})` : words
    }
    default:
      return neverCondition(condition)
  }
}

function leafWords({ fact, operator, values }: Leaf): string {
  const operands = values.map(valueWords).join(' and ')
  return [fact.path, 'is', spokenOperators[operator], operands].filter((word) => word !== '').join(' ')
}

/** What a fact is compared with, as the rule writes it. */
export function valueWords(value: Value): string {
  switch (value.type) {
    case 'constant':
      return value.text
    case 'fact':
      return value.fact.path
    case 'sum':
      return value.of.map(valueWords).join(' + ')
    case 'largest':
    case 'smallest':
      return `the ${value.type} of ${value.of.map(valueWords).join(', ')}`
    case 'times':
      return `${value.factor} times ${valueWords(value.of)}`
    default:
      return neverValue(value)
  }
}

function neverCondition(condition: never): never {
  throw new TypeError(`no such condition: ${String(condition)}`)
}

function neverValue(value: never): never {
  throw new TypeError(`no such value: ${String(value)}`)
}
