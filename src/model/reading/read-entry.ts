import { parseQuantity } from '../../units/index.js'
import { standings, waysOfKnowing, type Entry, type EntryValue, type Standing, type WayOfKnowing } from '../entry.js'
import type { ChoiceField, LeafField, ListField } from '../field.js'
import { pointerOf } from '../problem.js'
import { nearestIn, type ProblemList, type Steps } from './problems.js'
import { describe, isMap, textOf } from './shapes.js'

const longKeys = ['value', 'standing', 'how', 'by', 'at', 'because', 'evidence', 'within'] as const

/** Words that mean something of their own and are never values. */
export const reservedWords: readonly string[] = ['unknown', 'none', 'not-applicable']

interface Reading {
  readonly steps: Steps
  readonly problems: ProblemList
  /** Standing of the thing the value belongs to. */
  readonly standing: Standing
  /** An amount that stands in for a calculation says how far it may be off. */
  readonly wantsWithin?: boolean
}

/** Reads one value, short or long. Unknown values have no entry. */
export function readEntry(field: LeafField, raw: unknown, reading: Reading): Entry | undefined {
  const { steps, problems } = reading
  if (raw === undefined) return undefined
  if (raw === null || raw === '')
    return problems.add('empty-value', steps, 'A value is missing here; write unknown if it is not known.', {
      nearest: 'unknown',
    })
  const long = isMap(raw) ? raw : { value: raw }
  for (const key of Object.keys(long)) {
    if (!longKeys.some((known) => known === key))
      problems.add('unknown-key', [...steps, key], `A value has no "${key}".`, nearestIn(key, longKeys))
  }
  if (long.value === undefined)
    return problems.add('no-value', steps, 'The long form of a value names it under "value".', { nearest: 'value' })
  const valueSteps = isMap(raw) ? [...steps, 'value'] : steps
  const value = readValue(field, long.value, { ...reading, steps: valueSteps })
  const about = readAbout(long, reading)
  if (value === undefined) return undefined
  const spread = widen(value, long.within, reading)
  return spread && { value: spread, text: printed(long.value), pointer: pointerOf(steps), ...about }
}

type About = Pick<Entry, 'standing' | 'evidence'> & Partial<Pick<Entry, 'how' | 'by' | 'at' | 'because'>>

function readAbout(long: Readonly<Record<string, unknown>>, reading: Reading): About {
  const { steps, problems } = reading
  const said =
    long.standing === undefined ? undefined : oneOf(standings, long.standing, [...steps, 'standing'], problems)
  const how =
    long.how === undefined ? undefined : oneOf<WayOfKnowing>(waysOfKnowing, long.how, [...steps, 'how'], problems)
  const words = Object.fromEntries(
    (['by', 'at', 'because'] as const).flatMap((key) =>
      textOf(long[key]) === undefined ? [] : [[key, textOf(long[key])]],
    ),
  )
  const evidence = Array.isArray(long.evidence) ? long.evidence.flatMap((id) => textOf(id) ?? []) : []
  if (long.evidence !== undefined && !Array.isArray(long.evidence))
    problems.add('not-a-list', [...steps, 'evidence'], 'Evidence is a list of ids.')
  return {
    standing: weaker(said ?? 'stated', reading.standing),
    evidence,
    ...(how === undefined ? {} : { how }),
    ...words,
  }
}

/** A value of an assumed thing is assumed at best. */
function weaker(own: Standing, thing: Standing): Standing {
  return own === 'stated' ? thing : own
}

/** One of a closed list of words, or a problem that names the nearest. */
export function oneOf<W extends string>(
  words: readonly W[],
  raw: unknown,
  steps: Steps,
  problems: ProblemList,
): W | undefined {
  const written = textOf(raw)
  const found = words.find((word) => word === written)
  if (found !== undefined) return found
  return problems.add('not-a-choice', steps, `"${written ?? describe(raw)}" is not one of ${words.join(', ')}.`, {
    expected: words.join(' | '),
    received: written ?? describe(raw),
    ...nearestIn(written ?? '', words),
  })
}

function readValue(field: LeafField, raw: unknown, reading: Reading): EntryValue | undefined {
  if (field.type === 'list') return readList(field, raw, reading)
  const { steps, problems } = reading
  const written = textOf(raw)
  if (written === undefined)
    return problems.add('not-a-value', steps, `One value is expected here, not ${describe(raw)}.`)
  if (written === 'unknown') return undefined
  if (reservedWords.includes(written)) {
    return problems.add(
      'reserved-word',
      steps,
      `"${written}" is not a value. Write unknown, or leave it out; that there is no such thing is said under "none:".`,
      { nearest: 'unknown' },
    )
  }
  switch (field.type) {
    case 'quantity': {
      const parsed = parseQuantity(written, field.quantity)
      if (parsed.ok) return { type: 'quantity', quantity: field.quantity, low: parsed.low, high: parsed.high }
      return problems.add('unreadable-quantity', steps, parsed.message, {
        received: written,
        ...(parsed.suggestion === undefined ? {} : { nearest: parsed.suggestion }),
      })
    }
    case 'choice':
      return readChoice(field, written, reading)
    case 'reference':
    case 'text':
      return { type: 'word', word: written }
    default:
      return neverField(field)
  }
}

function readChoice(field: ChoiceField, written: string, { steps, problems }: Reading): EntryValue | undefined {
  const word = oneOf(Object.keys(field.choices), written, steps, problems)
  return word === undefined ? undefined : { type: 'word', word }
}

function readList(field: ListField, raw: unknown, reading: Reading): EntryValue | undefined {
  if (textOf(raw) === 'unknown') return undefined
  if (!Array.isArray(raw)) {
    return reading.problems.add(
      'not-a-list',
      reading.steps,
      'A list is expected here; write [a, b], or [] when there are none.',
      { received: describe(raw) },
    )
  }
  const members: string[] = []
  let complete = true
  for (const [index, item] of raw.entries()) {
    const value = readValue(field.of, item, { ...reading, steps: [...reading.steps, index] })
    if (value?.type === 'word') members.push(value.word)
    else complete = false
  }
  return { type: 'list', members, complete }
}

function widen(value: EntryValue, within: unknown, reading: Reading): EntryValue | undefined {
  if (value.type !== 'quantity') return value
  if (within === undefined) {
    if (reading.wantsWithin !== true) return value
    return reading.problems.add(
      'no-within',
      reading.steps,
      'An amount that stands in for a calculation says how far it may be off.',
      { nearest: 'within: 5 gal' },
    )
  }
  const parsed = parseQuantity(
    textOf(within) ?? '',
    value.quantity === 'temperature' ? 'temperatureDifference' : value.quantity,
  )
  if (!parsed.ok) return reading.problems.add('unreadable-quantity', [...reading.steps, 'within'], parsed.message)
  return { ...value, low: value.low - parsed.high, high: value.high + parsed.high }
}

function printed(raw: unknown): string {
  return Array.isArray(raw) ? `[${raw.map((item) => textOf(item) ?? '').join(', ')}]` : (textOf(raw) ?? '')
}

function neverField(field: never): never {
  throw new TypeError(`no such field: ${String(field)}`)
}
