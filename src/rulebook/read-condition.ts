import type { ResolvedFact } from '../facts/index.js'
import { describe, isMap, nearestIn, textOf, type LeafField, type Steps } from '../model/index.js'
import type { Condition, Leaf } from './condition.js'
import { operators, operatorsFor, type Operator } from './operators.js'
import { readValue, type Value, type ValueReading } from './value.js'

const groups = ['all', 'any', 'not'] as const
const longKeys: readonly string[] = ['fact', 'operator', 'value']

/** Reads a condition tree, long or short. Every mistake is told; undefined means one was. */
export function readCondition(raw: unknown, steps: Steps, reading: ValueReading): Condition | undefined {
  const { problems } = reading
  if (!isMap(raw)) return problems.add('bad-condition', steps, `A condition is expected here, not ${describe(raw)}.`)
  const keys = Object.keys(raw)
  const refused = keys.find((key) => key === 'path' || key === 'params' || key === 'priority')
  if (refused !== undefined)
    return problems.add(
      'refused-key',
      [...steps, refused],
      `"${refused}" has no place in a condition; name the fact itself.`,
    )
  const group = groups.find((name) => keys.includes(name))
  if (group !== undefined) return readGroup(group, raw, steps, reading)
  if (keys.includes('fact') && keys.includes('operator')) return readLong(raw, steps, reading)
  const [path] = keys
  if (path === undefined) return problems.add('bad-condition', steps, 'An empty condition says nothing; leave it out.')
  if (keys.length > 1)
    return problems.add('two-keys', steps, 'One comparison in one map; for several write "all:" with a list.', {
      nearest: 'all',
    })
  const near = nearestIn(path, groups)
  if (!path.includes('.'))
    return problems.add('unknown-key', [...steps, path], `"${path}" is neither a group nor a fact of something.`, near)
  return readShort(path, raw[path], [...steps, path], reading)
}

function readGroup(
  group: (typeof groups)[number],
  raw: Readonly<Record<string, unknown>>,
  steps: Steps,
  reading: ValueReading,
): Condition | undefined {
  const { problems } = reading
  if (Object.keys(raw).length > 1) return problems.add('two-keys', steps, `"${group}" stands alone in its map.`)
  const inner = raw[group]
  if (group === 'not') {
    const one = readCondition(inner, [...steps, group], reading)
    return one && { type: 'not', of: [one] }
  }
  if (!Array.isArray(inner) || inner.length === 0)
    return problems.add('bad-condition', [...steps, group], `"${group}" has a list of conditions, at least one.`)
  const of = inner.map((item: unknown, index) => readCondition(item, [...steps, group, index], reading))
  const good = of.filter((one) => one !== undefined)
  return good.length === of.length ? { type: group, of: good } : undefined
}

function readLong(raw: Readonly<Record<string, unknown>>, steps: Steps, reading: ValueReading): Leaf | undefined {
  for (const key of Object.keys(raw))
    if (!longKeys.includes(key))
      reading.problems.add('unknown-key', [...steps, key], `A comparison has no "${key}".`, nearestIn(key, longKeys))
  const fact = reading.resolve(textOf(raw.fact) ?? '', [...steps, 'fact'])
  const operator = readOperator(textOf(raw.operator) ?? '', fact, [...steps, 'operator'], reading)
  return fact && operator && readLeaf({ fact, operator }, raw.value, [...steps, 'value'], reading)
}

function readShort(path: string, raw: unknown, steps: Steps, reading: ValueReading): Leaf | undefined {
  const { problems } = reading
  const fact = reading.resolve(path, steps)
  if (!isMap(raw)) return fact && readPlain(fact, raw, steps, reading)
  const keys = Object.keys(raw)
  const [word] = keys
  if (keys.length !== 1 || word === undefined)
    return problems.add('two-keys', steps, 'One operator in one comparison; for several write "all:" with a list.', {
      nearest: 'all',
    })
  const operator = readOperator(word, fact, [...steps, word], reading)
  return fact && operator && readLeaf({ fact, operator }, raw[word], [...steps, word], reading)
}

function readPlain(fact: ResolvedFact, raw: unknown, steps: Steps, reading: ValueReading): Leaf | undefined {
  if (fact.type.type === 'list')
    return reading.problems.add(
      'list-fact',
      steps,
      `${fact.path} is a list; write { includes: ... } or { excludes: ... }.`,
      { nearest: 'includes' },
    )
  return readLeaf({ fact, operator: Array.isArray(raw) ? 'oneOf' : 'is' }, raw, steps, reading)
}

/** Finds an operator and holds it against the type of the fact. */
export function readOperator(
  word: string,
  fact: ResolvedFact | undefined,
  steps: Steps,
  { problems }: ValueReading,
): Operator | undefined {
  const operator = operators.find((name) => name === word)
  if (operator === undefined)
    return problems.add('unknown-operator', steps, `There is no operator "${word}".`, nearestIn(word, operators))
  if (fact === undefined) return undefined
  const fitting: readonly Operator[] = operatorsFor[shapeOf(fact.type)]
  if (fitting.includes(operator)) return operator
  return problems.add('wrong-operator', steps, `"${operator}" does not fit ${fact.path}; ${fitting.join(', ')} do.`)
}

function shapeOf(type: LeafField): keyof typeof operatorsFor {
  if (type.type === 'quantity' || type.type === 'list') return type.type
  return 'word'
}

interface LeafStart {
  readonly fact: ResolvedFact
  readonly operator: Operator
}

/** The value side of a comparison: one value, or two for `between`. */
export function readLeaf(
  { fact, operator }: LeafStart,
  raw: unknown,
  steps: Steps,
  reading: ValueReading,
): Leaf | undefined {
  const values = readSides(operator, raw, { type: fact.type, steps, reading })
  return values && { type: 'leaf', fact, operator, values }
}

function readSides(
  operator: Operator,
  raw: unknown,
  side: { type: LeafField; steps: Steps; reading: ValueReading },
): readonly Value[] | undefined {
  const { type, steps, reading } = side
  const many = operator === 'oneOf' || operator === 'noneOf'
  if (operator === 'between') {
    if (!Array.isArray(raw) || raw.length !== 2)
      return reading.problems.add('bad-value', steps, '"between" has two values: [low, high].')
    const ends = raw.map((item: unknown, index) => readValue(item, type, [...steps, index], reading))
    const good = ends.filter((end) => end !== undefined)
    return good.length === 2 ? good : undefined
  }
  if (many && !Array.isArray(raw) && !isMap(raw))
    return reading.problems.add('bad-value', steps, `"${operator}" has a list of values.`, {
      nearest: `[${textOf(raw) ?? ''}]`,
    })
  if (!many && Array.isArray(raw))
    return reading.problems.add('bad-value', steps, `"${operator}" has one value, not a list.`, { nearest: 'oneOf' })
  const value = readValue(raw, type, steps, reading)
  return value && [value]
}
