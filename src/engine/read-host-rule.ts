import type { RuleProperties } from 'json-rules-engine'
import { describe, isMap, nearestIn, problemList, type Model, type ProblemList } from '../model/index.js'
import type { AskedWords } from './asked-rule.js'
import { isPlain } from './refuse-foreign.js'
import { readHostConditions, type HostReading } from './read-host-conditions.js'
import type { Listener } from './undeclared.js'
import { UnusableHostContent } from './unusable-host-content.js'

export interface HostRulePlace extends Omit<HostReading, 'of' | 'problems'> {
  /** Names that are taken, those of the rulebook first. */
  readonly taken: ReadonlySet<string>
}

const ruleWords = ['name', 'of', 'conditions', 'event', 'priority', 'onSuccess', 'onFailure']
const ownEvents = ['success', 'failure', 'verdict']

/**
 * Reads a host's rule into what a stock rule is made from.
 *
 * @throws UnusableHostContent with every problem found
 */
export function readHostRule(raw: unknown, place: HostRulePlace): AskedWords {
  const problems = problemList()
  const words =
    isMap(raw) && isPlain(raw)
      ? readWords(raw, place, problems)
      : problems.add('not-a-plain-rule', [], 'A rule is handed over as a plain object, not as an instance of a class.')
  if (words !== undefined && problems.found.length === 0) return words
  const file = isMap(raw) && typeof raw.name === 'string' ? `rule ${raw.name}` : 'a rule without name'
  throw new UnusableHostContent(problems.found.map((problem) => ({ ...problem, file })))
}

function readWords(
  raw: Readonly<Record<string, unknown>>,
  place: HostRulePlace,
  problems: ProblemList,
): AskedWords | undefined {
  for (const key of Object.keys(raw))
    if (!ruleWords.includes(key))
      problems.add('unknown-key', [key], `A rule has no "${key}".`, nearestIn(key, ruleWords))
  const name = readName(raw.name, place.taken, problems)
  const about = readKinds(raw.of, place.catalogue.model, problems)
  const event = readEvent(raw.event, problems)
  const conditions = readHostConditions(raw.conditions, ['conditions'], {
    ...place,
    ...(about === undefined ? {} : { of: about.of }),
    problems,
  })
  if (about === undefined || event === undefined || conditions === undefined) return undefined
  const { priority, onSuccess, onFailure } = raw
  if (priority !== undefined && !isRank(priority))
    problems.add('bad-value', ['priority'], 'A priority is a whole number from 1 up.')
  return {
    ...about,
    properties: { name, conditions, event, ...(isRank(priority) ? { priority } : {}) },
    handlers: { success: handlerOf(onSuccess), failure: handlerOf(onFailure) },
  }
}

function readName(raw: unknown, taken: ReadonlySet<string>, problems: ProblemList): string {
  const name = typeof raw === 'string' ? raw : ''
  if (name === '')
    problems.add('missing-key', ['name'], 'A rule has a name, so that its results and faults can be told apart.')
  if (taken.has(name)) problems.add('duplicate-id', ['name'], `There is a rule "${name}" already.`)
  return name
}

function readKinds(
  raw: unknown,
  { kindsIn }: Model,
  problems: ProblemList,
): Pick<AskedWords, 'of' | 'kinds'> | undefined {
  const of = typeof raw === 'string' ? raw : describe(raw)
  const kinds = kindsIn.get(of)
  if (kinds === undefined)
    problems.add('unknown-kind', ['of'], `There is no kind or family "${of}".`, nearestIn(of, kindsIn.keys()))
  return kinds && { of, kinds }
}

function readEvent(raw: unknown, problems: ProblemList): RuleProperties['event'] | undefined {
  if (isMap(raw) && typeof raw.type === 'string' && !ownEvents.includes(raw.type))
    return { type: raw.type, ...(isMap(raw.params) ? { params: { ...raw.params } } : {}) }
  problems.add(
    'bad-event',
    ['event'],
    `An event has a type of its own; the engine itself tells ${ownEvents.join(', ')}.`,
  )
  return undefined
}

function handlerOf(raw: unknown): Listener | undefined {
  return typeof raw === 'function' ? (...told) => Reflect.apply(raw, undefined, told) as unknown : undefined
}

function isRank(raw: unknown): raw is number {
  return typeof raw === 'number' && Number.isInteger(raw) && raw > 0
}
