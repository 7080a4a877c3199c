import fc from 'fast-check'
import { between, known, list, unknown, word, type Answer, type ResolvedFact } from '../../src/facts/index.js'
import { choice, listOf, quantity } from '../../src/model/index.js'
import type { Condition, Leaf, Operator, Value } from '../../src/rulebook/index.js'

// Conditions over facts that answer by themselves: no document, no view, no subject.

const letters = ['a', 'b', 'c', 'd']
const someWord = fc.constantFrom(...letters)
const someNumber = fc.integer({ min: -4, max: 4 })
const someList = fc.uniqueArray(someWord, { minLength: 1, maxLength: 3 })

/** How much is known of the facts. */
export type Knowledge = 'all known' | 'some missing' | 'some bounded'

function open(answer: fc.Arbitrary<Answer>, bound: fc.Arbitrary<Answer>, knowledge: Knowledge): fc.Arbitrary<Answer> {
  if (knowledge === 'all known') return answer
  return fc.oneof(answer, answer, knowledge === 'some missing' ? fc.constant(unknown()) : bound)
}

function answersBy(knowledge: Knowledge) {
  const bound = fc.tuple(fc.option(someNumber), fc.option(someNumber)).map(([a, b]): Answer => {
    const [low, high] = [a ?? -Infinity, b ?? Infinity]
    return between(Math.min(low, high), Math.max(low, high))
  })
  return {
    quantity: open(
      someNumber.map((number) => known(number)),
      bound,
      knowledge,
    ),
    word: open(
      someWord.map((one) => word(one)),
      fc.constant(unknown()),
      knowledge,
    ),
    list: open(
      someList.map((members) => list(members, true)),
      someList.map((members) => list(members, false)),
      knowledge,
    ),
  }
}

type Shape = keyof ReturnType<typeof answersBy>

const types = {
  quantity: quantity('pressure'),
  word: choice(Object.fromEntries(letters.map((letter) => [letter, letter]))),
  list: listOf(choice(Object.fromEntries(letters.map((letter) => [letter, letter])))),
} as const satisfies Record<Shape, ResolvedFact['type']>

function facts(shape: Shape, knowledge: Knowledge): fc.Arbitrary<ResolvedFact> {
  return fc
    .tuple(fc.uuid(), answersBy(knowledge)[shape])
    .map(([name, answer]) => ({ path: `thing.${name}`, type: types[shape], ask: () => answer }))
}

function values(shape: Shape, knowledge: Knowledge): fc.Arbitrary<Value> {
  const constant = answersBy('all known')[shape].map((answer): Value => ({ type: 'constant', answer, text: '' }))
  const fact = facts(shape, knowledge).map((one): Value => ({ type: 'fact', fact: one }))
  if (shape !== 'quantity') return fc.oneof(constant, fact)
  const plain = fc.oneof(constant, fact)
  const many = fc.array(plain, { minLength: 1, maxLength: 3 })
  const arithmetic = fc
    .tuple(fc.constantFrom('sum' as const, 'largest' as const, 'smallest' as const), many)
    .map(([type, of]): Value => ({ type, of }))
  const times = fc
    .tuple(fc.constantFrom(-1, 0.5, 2), plain)
    .map(([factor, of]): Value => ({ type: 'times', factor, of }))
  return fc.oneof(plain, plain, arithmetic, times)
}

interface Comparison {
  readonly operators: readonly Operator[]
  readonly left: Shape
  readonly right: Shape
}

const comparisons: readonly Comparison[] = [
  {
    operators: ['is', 'isNot', 'atLeast', 'atMost', 'moreThan', 'lessThan', 'between'],
    left: 'quantity',
    right: 'quantity',
  },
  { operators: ['is', 'isNot'], left: 'word', right: 'word' },
  { operators: ['oneOf', 'noneOf'], left: 'word', right: 'list' },
  { operators: ['includes', 'excludes'], left: 'list', right: 'word' },
]

function leaves(knowledge: Knowledge): fc.Arbitrary<Leaf> {
  const of = ({ operators, left, right }: Comparison): fc.Arbitrary<Leaf> =>
    fc
      .tuple(facts(left, knowledge), fc.constantFrom(...operators), values(right, knowledge), values(right, knowledge))
      .map(([fact, operator, one, other]) => ({
        type: 'leaf',
        fact,
        operator,
        values: operator === 'between' ? [one, other] : [one],
      }))
  return fc.oneof(...comparisons.map(of))
}

/** Trees of all, any and not over comparisons of every kind, up to four deep. */
export function conditions(knowledge: Knowledge): fc.Arbitrary<Condition> {
  const { tree } = fc.letrec<{ tree: Condition }>((tie) => ({
    tree: fc.oneof(
      { maxDepth: 4 },
      leaves(knowledge),
      fc
        .tuple(fc.constantFrom('all' as const, 'any' as const), fc.array(tie('tree'), { minLength: 1, maxLength: 3 }))
        .map(([type, of]): Condition => ({ type, of })),
      tie('tree').map((one): Condition => ({ type: 'not', of: [one] })),
    ),
  }))
  return tree
}
