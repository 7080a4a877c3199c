import type { TopLevelCondition } from 'json-rules-engine'
import { resolveFact, type Catalogue, type ResolvedFact } from '../facts/index.js'
import { describe, isMap, nearestIn, type ProblemList, type Steps } from '../model/index.js'
import { checkHostValue } from './check-host-value.js'
import type { HostCondition } from './host-rule.js'

/** What a host's conditions are held against. */
export interface HostReading {
  readonly catalogue: Catalogue
  /** Kind, family or singleton that the facts are about; a condition that is named for many rules has none. */
  readonly of?: string
  readonly problems: ProblemList
  readonly hostFacts: ReadonlySet<string>
  readonly knowsOperator: (name: string) => boolean
  readonly operatorNames: readonly string[]
}

const groups = ['all', 'any', 'not', 'condition'] as const
const groupWords = ['name', 'priority']
const leafWords = ['fact', 'operator', 'value', 'params', 'name', 'priority']

/**
 * Reads a host's condition tree into a fresh one, so that frozen input can be given. Every mistake is told; undefined
 * means one was.
 */
export function readHostConditions(raw: unknown, steps: Steps, reading: HostReading): TopLevelCondition | undefined {
  const before = reading.problems.found.length
  if (!isMap(raw) || groups.every((group) => !(group in raw)))
    return reading.problems.add('bad-condition', steps, 'Conditions begin with "all", "any", "not" or "condition".')
  const read = readNested(raw, steps, reading)
  return reading.problems.found.length > before ? undefined : (read as TopLevelCondition)
}

function readNested(raw: unknown, steps: Steps, reading: HostReading): HostCondition | undefined {
  const { problems } = reading
  if (!isMap(raw)) return problems.add('bad-condition', steps, `A condition is expected here, not ${describe(raw)}.`)
  const [group, second] = groups.filter((name) => name in raw)
  if (second !== undefined) return problems.add('two-keys', steps, `"${second}" stands in a map of its own.`)
  reportUnknownKeys(raw, group === undefined ? leafWords : [group, ...groupWords], steps, problems)
  const words = wordsOf(raw)
  switch (group) {
    case undefined:
      return readLeaf(raw, steps, reading)
    case 'all':
      return { all: readMany(raw.all, [...steps, group], reading), ...words }
    case 'any':
      return { any: readMany(raw.any, [...steps, group], reading), ...words }
    case 'not': {
      const one = readNested(raw.not, [...steps, group], reading)
      return one && { not: one, ...words }
    }
    case 'condition':
      if (typeof raw.condition !== 'string')
        return problems.add('bad-condition', [...steps, group], 'The name of a condition is expected here.')
      return { condition: raw.condition, ...words }
    default:
      return neverGroup(group)
  }
}

function reportUnknownKeys(
  raw: Readonly<Record<string, unknown>>,
  known: readonly string[],
  steps: Steps,
  problems: ProblemList,
): void {
  for (const key of Object.keys(raw)) {
    if (key === 'path')
      problems.add('refused-key', [...steps, key], '"path" has no place in a condition; name the fact itself.')
    else if (!known.includes(key))
      problems.add('unknown-key', [...steps, key], `There is no "${key}" in a condition.`, nearestIn(key, known))
  }
}

function wordsOf(raw: Readonly<Record<string, unknown>>): { readonly name?: string; readonly priority?: number } {
  return {
    ...(typeof raw.name === 'string' ? { name: raw.name } : {}),
    ...(typeof raw.priority === 'number' ? { priority: raw.priority } : {}),
  }
}

function readMany(raw: unknown, steps: Steps, reading: HostReading): readonly HostCondition[] {
  const list: readonly unknown[] = Array.isArray(raw) ? raw : []
  if (list.length === 0)
    reading.problems.add('bad-condition', steps, 'A list of conditions is expected here, at least one.')
  return list.flatMap((item, index) => readNested(item, [...steps, index], reading) ?? [])
}

function readLeaf(
  raw: Readonly<Record<string, unknown>>,
  steps: Steps,
  reading: HostReading,
): HostCondition | undefined {
  const { problems, hostFacts, knowsOperator, operatorNames } = reading
  const fact = checkFact(raw.fact, [...steps, 'fact'], reading)
  const operator = typeof raw.operator === 'string' ? raw.operator : describe(raw.operator)
  if (!knowsOperator(operator))
    problems.add(
      'unknown-operator',
      [...steps, 'operator'],
      `There is no operator "${operator}".`,
      nearestIn(operator, operatorNames),
    )
  if (!('value' in raw)) problems.add('missing-key', steps, '"value" is missing.')
  if (isMap(raw.value) && 'fact' in raw.value) readFactValue(raw.value, [...steps, 'value'], reading)
  else if (fact !== undefined) checkHostValue(raw.value, fact, [...steps, 'value'], problems)
  if (raw.params !== undefined && !hostFacts.has(String(raw.fact)))
    problems.add('refused-key', [...steps, 'params'], 'Facts of ours have no parameters.')
  if (typeof raw.fact !== 'string') return undefined
  return {
    fact: raw.fact,
    operator,
    value: raw.value,
    ...(isMap(raw.params) ? { params: raw.params } : {}),
    ...wordsOf(raw),
  }
}

function readFactValue(raw: Readonly<Record<string, unknown>>, steps: Steps, reading: HostReading): void {
  reportUnknownKeys(raw, ['fact', 'params'], steps, reading.problems)
  checkFact(raw.fact, [...steps, 'fact'], reading)
}

/** The fact of ours that a name means; nothing for a fact of the host's, or one that no rule names yet. */
function checkFact(
  raw: unknown,
  steps: Steps,
  { catalogue, of, problems, hostFacts }: HostReading,
): ResolvedFact | undefined {
  if (typeof raw !== 'string') return problems.add('missing-key', steps, 'The name of a fact is expected here.')
  if (hostFacts.has(raw) || of === undefined) return undefined
  const found = resolveFact(catalogue, of, raw)
  if (found.ok) return found.fact
  const nearest = found.nearest ?? nearestIn(raw, hostFacts).nearest
  return problems.add('unknown-fact', steps, found.message, {
    received: raw,
    ...(nearest === undefined ? {} : { nearest }),
  })
}

function neverGroup(group: never): never {
  throw new TypeError(`no such group: ${String(group)}`)
}
