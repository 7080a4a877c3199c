import { isMap, nearestIn, textOf, type Edit, type ProblemList, type Steps } from '../../model/index.js'
import { readExpected, type ExpectedVerdict } from './expected-verdict.js'

interface Named {
  readonly name: string
  readonly expect: ExpectedVerdict
}

/** An example by facts: what is known of the subject, laid over what all examples of the rule share. */
export interface FactsExample extends Named {
  readonly type: 'facts'
  readonly facts: Readonly<Record<string, unknown>>
}

/** An example by a small installation and what is changed in it, for rules that rest on checks. */
export interface FragmentExample extends Named {
  readonly type: 'fragment'
  /** Name of the installation: `fragments/one-boiler`. */
  readonly of: string
  readonly edits: readonly Edit[]
  /** Whose verdict is meant; left out, the worst of all that are listed. */
  readonly subject?: string
}

/** An example of a rule: facts given, or edits on a fragment, and the verdict expected. */
export type Example = FactsExample | FragmentExample

/** The examples of a rule as written, with the facts that all of them share. Every mistake is told. */
export function readExamples(rule: unknown, problems: ProblemList): readonly Example[] {
  const written = isMap(rule) && Array.isArray(rule.examples) ? rule.examples : []
  const given = isMap(rule) && isMap(rule.given) ? rule.given : {}
  return written.flatMap(
    (raw: unknown, index) => readExample(raw, given, { steps: ['examples', index], problems }) ?? [],
  )
}

interface Reading {
  readonly steps: Steps
  readonly problems: ProblemList
}

const factsKeys = ['name', 'facts', 'expect'] as const
const fragmentKeys = ['name', 'of', 'edits', 'subject', 'expect'] as const

function readExample(
  raw: unknown,
  given: Readonly<Record<string, unknown>>,
  { steps, problems }: Reading,
): Example | undefined {
  if (!isMap(raw)) return problems.add('not-a-map', steps, 'An example is written as names with values.')
  const keys: readonly string[] = raw.of === undefined ? factsKeys : fragmentKeys
  for (const key of Object.keys(raw))
    if (!keys.includes(key))
      problems.add('unknown-key', [...steps, key], `An example has no "${key}".`, nearestIn(key, keys))
  const expect = readExpected(raw.expect, [...steps, 'expect'], problems)
  const of = textOf(raw.of)
  const name = textOf(raw.name) ?? of
  if (name === undefined)
    return problems.add('no-name', steps, 'An example has a name that says what it shows.', { nearest: 'name' })
  if (of !== undefined)
    return expect && { type: 'fragment', name, of, ...readChanges(raw, { steps, problems }), expect }
  if (!isMap(raw.facts))
    return problems.add(
      'missing-key',
      [...steps, 'facts'],
      '"facts" is missing: what is known, or {} where nothing is.',
      { nearest: 'facts' },
    )
  return expect && { type: 'facts', name, facts: { ...given, ...raw.facts }, expect }
}

function readChanges(
  raw: Readonly<Record<string, unknown>>,
  { steps, problems }: Reading,
): Pick<FragmentExample, 'edits' | 'subject'> {
  const subject = textOf(raw.subject)
  const written: readonly unknown[] = Array.isArray(raw.edits) ? raw.edits : []
  if (raw.edits !== undefined && !Array.isArray(raw.edits))
    problems.add('not-a-list', [...steps, 'edits'], 'Edits are a list.')
  const edits = written.filter(isEdit)
  if (edits.length < written.length)
    problems.add('not-an-edit', [...steps, 'edits'], 'An edit is one of set, remove, insert, forget.')
  return { edits, ...(subject === undefined ? {} : { subject }) }
}

function isEdit(value: unknown): value is Edit {
  return isMap(value) && ['set', 'remove', 'insert', 'forget'].some((verb) => Object.hasOwn(value, verb))
}
