import { boundsOf, type Answer } from '../facts/index.js'
import { isAtLeast, isLess } from '../units/index.js'
import { both, opposite, type Tri } from './truth.js'

/** Ours, and total: a missing value makes every comparison undecided. */
export const operators = [
  'is',
  'isNot',
  'oneOf',
  'noneOf',
  'atLeast',
  'atMost',
  'moreThan',
  'lessThan',
  'between',
  'includes',
  'excludes',
] as const
/** The name of a comparison. */
export type Operator = (typeof operators)[number]

export const operatorsFor = {
  quantity: ['is', 'isNot', 'atLeast', 'atMost', 'moreThan', 'lessThan', 'between'],
  word: ['is', 'isNot', 'oneOf', 'noneOf'],
  list: ['includes', 'excludes'],
} as const satisfies Readonly<Record<string, readonly Operator[]>>

/** How an operator reads between the fact and the value. */
export const spokenOperators: Readonly<Record<Operator, string>> = {
  is: '',
  isNot: 'other than',
  oneOf: 'one of',
  noneOf: 'none of',
  atLeast: 'at least',
  atMost: 'at most',
  moreThan: 'more than',
  lessThan: 'less than',
  between: 'between',
  includes: 'including',
  excludes: 'without',
}

/** Compares a fact with what is demanded. `between` has two values, every other operator one. */
export function compare(operator: Operator, left: Answer, right: readonly Answer[]): Tri {
  const first = right[0]
  if (first === undefined) return 0
  switch (operator) {
    case 'is':
      return same(left, first)
    case 'isNot':
      return opposite(same(left, first))
    case 'oneOf':
      return among(left, first)
    case 'noneOf':
      return opposite(among(left, first))
    case 'atLeast':
      return reaches(left, first)
    case 'atMost':
      return reaches(first, left)
    case 'moreThan':
      return opposite(reaches(first, left))
    case 'lessThan':
      return opposite(reaches(left, first))
    case 'between':
      return right[1] === undefined ? 0 : both([reaches(left, first), reaches(right[1], left)])
    case 'includes':
      return holds(left, first)
    case 'excludes':
      return opposite(holds(left, first))
    default:
      return neverOperator(operator)
  }
}

function reaches(left: Answer, right: Answer): Tri {
  const [a, b] = [boundsOf(left), boundsOf(right)]
  if (isAtLeast(a.low, b.high)) return finite(a.low, b.high) ? 1 : 0
  if (isLess(a.high, b.low)) return finite(a.high, b.low) ? -1 : 0
  return 0
}

/** An end without bound decides nothing. */
function finite(a: number, b: number): boolean {
  return !(Math.abs(a) === Infinity && Math.abs(b) === Infinity)
}

function same(left: Answer, right: Answer): Tri {
  if (left.state === 'word' && right.state === 'word') return left.word === right.word ? 1 : -1
  if (left.state !== 'number' || right.state !== 'number') return 0
  return both([reaches(left, right), reaches(right, left)])
}

function among(left: Answer, right: Answer): Tri {
  if (left.state !== 'word' || right.state !== 'list') return 0
  if (right.members.includes(left.word)) return 1
  return right.complete ? -1 : 0
}

function holds(left: Answer, right: Answer): Tri {
  if (left.state !== 'list' || right.state !== 'word') return 0
  if (left.members.includes(right.word)) return 1
  return left.complete ? -1 : 0
}

function neverOperator(operator: never): never {
  throw new TypeError(`no such operator: ${String(operator)}`)
}
