import {
  known,
  largestOf,
  list,
  smallestOf,
  sumOf,
  timesOf,
  word,
  type Answer,
  type ResolvedFact,
  type View,
} from '../facts/index.js'
import {
  isMap,
  nearestIn,
  textOf,
  type LeafField,
  type ProblemList,
  type QuantityName,
  type Steps,
  type Thing,
} from '../model/index.js'
import { addQuantities, comparableQuantities, parseQuantity, secondsPerDay } from '../units/index.js'

/** What a fact is compared with: a constant, another fact, or simple arithmetic over both. */
export type Value =
  | { readonly type: 'constant'; readonly answer: Answer; readonly text: string }
  | { readonly type: 'fact'; readonly fact: ResolvedFact }
  | { readonly type: 'sum' | 'largest' | 'smallest'; readonly of: readonly Value[] }
  | { readonly type: 'times'; readonly factor: number; readonly of: Value }

export function valueOf(value: Value, view: View, subject: Thing): Answer {
  switch (value.type) {
    case 'constant':
      return value.answer
    case 'fact':
      return value.fact.ask(view, subject)
    case 'sum':
      return sumOf(value.of.map((one) => valueOf(one, view, subject)))
    case 'largest':
      return largestOf(value.of.map((one) => valueOf(one, view, subject)))
    case 'smallest':
      return smallestOf(value.of.map((one) => valueOf(one, view, subject)))
    case 'times':
      return timesOf(value.factor, valueOf(value.of, view, subject))
    default:
      return neverValue(value)
  }
}

/** Facts that a value asks. */
export function factsIn(value: Value): readonly ResolvedFact[] {
  switch (value.type) {
    case 'constant':
      return []
    case 'fact':
      return [value.fact]
    case 'times':
      return factsIn(value.of)
    case 'sum':
    case 'largest':
    case 'smallest':
      return value.of.flatMap(factsIn)
    default:
      return neverValue(value)
  }
}

export interface ValueReading {
  readonly problems: ProblemList
  readonly resolve: (path: string, steps: Steps) => ResolvedFact | undefined
}

/** Reads the right side of a comparison for a fact of a given type. Every mistake is told; undefined means one was. */
export function readValue(raw: unknown, type: LeafField, steps: Steps, reading: ValueReading): Value | undefined {
  if (type.type === 'quantity') return readAmount(raw, type.quantity, steps, reading)
  if (isMap(raw)) return readWordFact(raw, type, steps, reading)
  return readWord(raw, type, steps, reading)
}

const shapes = ['fact', 'sum', 'largest', 'smallest', 'times'] as const

function readAmount(raw: unknown, quantity: QuantityName, steps: Steps, reading: ValueReading): Value | undefined {
  if (!isMap(raw)) return readConstant(raw, quantity, steps, reading)
  const keys = Object.keys(raw)
  const [shape] = keys
  if (shape === 'times' && keys.every((key) => key === 'times' || key === 'of'))
    return readTimes(raw, quantity, steps, reading)
  if (keys.length !== 1 || shape === undefined)
    return reading.problems.add(
      'bad-value',
      steps,
      'A value is text, { fact: ... }, { sum: [...] }, { largest: [...] }, { smallest: [...] } or { times: 1.5, of: ... }.',
    )
  switch (shape) {
    case 'fact':
      return readAmountFact(raw.fact, quantity, [...steps, 'fact'], reading)
    case 'sum':
      return readSum(raw.sum, quantity, [...steps, 'sum'], reading)
    case 'largest':
    case 'smallest': {
      const of = readMany(raw[shape], [...steps, shape], reading, (item, at) => readAmount(item, quantity, at, reading))
      return of && { type: shape, of }
    }
    default:
      return reading.problems.add(
        'unknown-key',
        [...steps, shape],
        `A value has no "${shape}".`,
        nearestIn(shape, shapes),
      )
  }
}

function readConstant(
  raw: unknown,
  quantity: QuantityName,
  steps: Steps,
  { problems }: ValueReading,
): Value | undefined {
  const text = textOf(raw)
  if (text === undefined) return problems.add('bad-value', steps, 'One value is expected here.')
  const parsed = parseQuantity(text, quantity)
  if (!parsed.ok)
    return problems.add('wrong-unit', steps, parsed.message, {
      received: text,
      ...(parsed.suggestion === undefined ? {} : { nearest: parsed.suggestion }),
    })
  if (parsed.low !== parsed.high)
    return problems.add('not-one-day', steps, `"${text}" is more than one day; a rule names the day.`)
  return { type: 'constant', answer: known(parsed.low), text }
}

function readAmountFact(raw: unknown, quantity: QuantityName, steps: Steps, reading: ValueReading): Value | undefined {
  const fact = reading.resolve(textOf(raw) ?? '', steps)
  if (fact === undefined) return undefined
  const found = fact.type.type === 'quantity' ? fact.type.quantity : undefined
  if (found !== undefined && comparableQuantities(found, quantity)) return { type: 'fact', fact }
  return reading.problems.add(
    'wrong-dimension',
    steps,
    `${fact.path} is ${found === undefined ? `a ${fact.type.type}` : `a ${found}`}; a ${quantity} is compared here.`,
  )
}

/** A temperature or a date takes differences on top; anything else takes its own kind. */
function readSum(raw: unknown, quantity: QuantityName, steps: Steps, reading: ValueReading): Value | undefined {
  const step: QuantityName =
    quantity === 'temperature' ? 'temperatureDifference' : quantity === 'date' ? 'time' : quantity
  if (addQuantities(quantity, step) !== quantity)
    return reading.problems.add('bad-value', steps, `Amounts of ${quantity} cannot be added.`)
  const items = Array.isArray(raw) ? raw : []
  const base =
    step === quantity
      ? -1
      : Math.max(
          0,
          items.findIndex((item) => isFactOf(item, quantity, reading)),
        )
  const of = readMany(raw, steps, reading, (item, at, index) =>
    readTerm(item, { quantity, step: index === base ? quantity : step }, at, reading),
  )
  return of && { type: 'sum', of }
}

/** Dates count days, times count seconds. */
function readTerm(
  item: unknown,
  { quantity, step }: { quantity: QuantityName; step: QuantityName },
  steps: Steps,
  reading: ValueReading,
): Value | undefined {
  const value = readAmount(item, step, steps, reading)
  return value !== undefined && quantity === 'date' && step === 'time'
    ? { type: 'times', factor: 1 / secondsPerDay, of: value }
    : value
}

function isFactOf(item: unknown, quantity: QuantityName, reading: ValueReading): boolean {
  if (!isMap(item) || item.fact === undefined) return false
  const quiet: ValueReading = { ...reading, problems: { found: [], add: () => undefined } }
  const fact = quiet.resolve(textOf(item.fact) ?? '', [])
  return fact?.type.type === 'quantity' && fact.type.quantity === quantity
}

function readTimes(
  raw: Readonly<Record<string, unknown>>,
  quantity: QuantityName,
  steps: Steps,
  reading: ValueReading,
): Value | undefined {
  const factor = Number(textOf(raw.times))
  if (!Number.isFinite(factor) || textOf(raw.times) === '')
    return reading.problems.add('bad-value', [...steps, 'times'], 'The factor is a plain number, such as 1.5.')
  if (quantity === 'temperature' || quantity === 'date')
    return reading.problems.add('bad-value', steps, `A ${quantity} cannot be multiplied.`)
  const of = readAmount(raw.of, quantity, [...steps, 'of'], reading)
  return of && { type: 'times', factor, of }
}

type ReadOne = (item: unknown, steps: Steps, index: number) => Value | undefined

function readMany(raw: unknown, steps: Steps, reading: ValueReading, read: ReadOne): readonly Value[] | undefined {
  if (!Array.isArray(raw) || raw.length === 0)
    return reading.problems.add('bad-value', steps, 'A list of values is expected here.')
  const values = raw.map((item: unknown, index) => read(item, [...steps, index], index))
  const good = values.filter((value) => value !== undefined)
  return good.length === values.length ? good : undefined
}

function readWordFact(
  raw: Readonly<Record<string, unknown>>,
  type: LeafField,
  steps: Steps,
  reading: ValueReading,
): Value | undefined {
  if (Object.keys(raw).join() !== 'fact')
    return reading.problems.add('bad-value', steps, 'A word is compared with text or with { fact: ... }.')
  const fact = reading.resolve(textOf(raw.fact) ?? '', [...steps, 'fact'])
  if (fact === undefined) return undefined
  const own = wordsOf(type)
  const other = wordsOf(fact.type)
  const meet = own === undefined || other === undefined ? own === other : own.some((choice) => other.includes(choice))
  if (meet) return { type: 'fact', fact }
  return reading.problems.add(
    'wrong-dimension',
    [...steps, 'fact'],
    `${fact.path} shares no word with what is compared here.`,
  )
}

function wordsOf(type: LeafField): readonly string[] | undefined {
  const one = type.type === 'list' ? type.of : type
  return one.type === 'choice' ? Object.keys(one.choices) : undefined
}

function readWord(raw: unknown, type: LeafField, steps: Steps, { problems }: ValueReading): Value | undefined {
  const items: readonly unknown[] = Array.isArray(raw) ? raw : [raw]
  const texts = items.map((item) => textOf(item) ?? '')
  const known = wordsOf(type)
  const wrong = texts.findIndex((text) => text === '' || (known !== undefined && !known.includes(text)))
  if (wrong >= 0) {
    const at = Array.isArray(raw) ? [...steps, wrong] : steps
    return problems.add(
      'not-a-choice',
      at,
      `"${texts[wrong] ?? ''}" is not one of ${(known ?? []).join(', ')}.`,
      nearestIn(texts[wrong] ?? '', known ?? []),
    )
  }
  const answer = Array.isArray(raw) ? list(texts, true) : word(texts[0] ?? '')
  return { type: 'constant', answer, text: texts.join(', ') }
}

function neverValue(value: never): never {
  throw new TypeError(`no such value: ${JSON.stringify(value)}`)
}
