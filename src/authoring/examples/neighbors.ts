import { boundsOf, isSettled, type ResolvedFact } from '../../facts/index.js'
import { isMap, problemList, type QuantityName } from '../../model/index.js'
import { leavesIn, valueOf, type Leaf, type Rule, type Rulebook } from '../../rulebook/index.js'
import { parseQuantity, writeQuantity } from '../../units/index.js'
import { exampleFacts } from './example-facts.js'
import { readExamples, type FactsExample } from './example.js'
import type { WrittenRule } from './run-examples.js'

/** A case beside an example, with everything known in it. What it should come to is for somebody else to say. */
export interface Neighbor {
  readonly name: string
  readonly facts: Readonly<Record<string, unknown>>
}

/**
 * Cases that lie next to the examples of a rule: each number that is compared, just below its limit, at it and just above;
 * each word that is compared, in every way it can be; each given fact forgotten, and each taken for granted.
 */
export function neighborsOf({ id, data }: WrittenRule, rulebook: Rulebook): readonly Neighbor[] {
  const rule = rulebook.rulesById.get(id)
  if (rule === undefined) return []
  const examples = readExamples(data, problemList()).flatMap((example) => (example.type === 'facts' ? [example] : []))
  const found = examples.flatMap((example) => [
    ...besideLimits(rulebook, rule, example),
    ...forgotten(example),
    ...assumed(example),
  ])
  return [...new Map(found.map((neighbor) => [JSON.stringify(neighbor.facts), neighbor])).values()]
}

function forgotten({ name, facts }: FactsExample): readonly Neighbor[] {
  return Object.keys(facts).map((path) => ({
    name: `${name}, ${path} forgotten`,
    facts: { ...facts, [path]: 'unknown' },
  }))
}

function assumed({ name, facts }: FactsExample): readonly Neighbor[] {
  return Object.entries(facts)
    .filter(([, raw]) => raw !== 'unknown')
    .map(([path, raw]) => ({
      name: `${name}, ${path} assumed`,
      facts: { ...facts, [path]: { ...(isMap(raw) ? raw : { value: raw }), standing: 'assumed' } },
    }))
}

function besideLimits(rulebook: Rulebook, rule: Rule, { name, facts }: FactsExample): readonly Neighbor[] {
  const conditions = [rule.when, ...rule.demands.flatMap((demand) => [demand.when, demand.require])].filter(
    (one) => one !== undefined,
  )
  const world = exampleFacts(rulebook.facts, rule, facts)
  const limitsOf = (leaf: Leaf): readonly number[] =>
    leaf.values
      .map((value) => valueOf(value, world.facts.whole, world.subject))
      .flatMap((answer) => (isSettled(answer) ? boundsOf(answer).low : []))
  return conditions.flatMap(leavesIn).flatMap((leaf) =>
    writings(leaf.fact, () => limitsOf(leaf)).map((written) => ({
      name: `${name}, ${leaf.fact.path} ${JSON.stringify(written)}`,
      facts: { ...facts, [leaf.fact.path]: besideOf(facts[leaf.fact.path], written) },
    })),
  )
}

/** Keeps what an example says of its value: that it is assumed, or shown by a photo. */
function besideOf(before: unknown, written: unknown): unknown {
  return isMap(before) ? { ...before, value: written } : written
}

function writings({ type }: ResolvedFact, limits: () => readonly number[]): readonly unknown[] {
  switch (type.type) {
    case 'quantity':
      return limits()
        .filter(Number.isFinite)
        .flatMap((limit) => amountsAround(limit, type.quantity))
    case 'choice':
      return Object.keys(type.choices)
    case 'list':
      return type.of.type === 'choice'
        ? [[], ...Object.keys(type.of.choices).map((member) => [member]), ['unknown']]
        : [[]]
    case 'reference':
    case 'text':
      return []
    default:
      return neverType(type)
  }
}

function amountsAround(limit: number, quantity: QuantityName): readonly string[] {
  const step = stepOf(limit, quantity)
  const texts = [limit - step, limit, limit + step].map((amount) => writeQuantity(amount, quantity, 'ip'))
  return texts.filter((text) => parseQuantity(text, quantity).ok)
}

function stepOf(limit: number, quantity: QuantityName): number {
  if (quantity === 'count' || quantity === 'date' || quantity === 'temperature') return 1
  return limit === 0 ? 0.01 : Math.abs(limit) / 100
}

function neverType(type: never): never {
  throw new TypeError(`no such type: ${String(type)}`)
}
