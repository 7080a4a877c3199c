import { describe, isMap, nearestIn, problemList } from '../model/index.js'
import type { AskedWords } from './asked-rule.js'
import { isPlain } from './refuse-foreign.js'
import { readHostConditions, type HostReading } from './read-host-conditions.js'
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
  const { catalogue, taken } = place
  if (!isMap(raw) || !isPlain(raw)) throw refusal('not-a-plain-rule', 'A rule is handed over as a plain object, not as an instance of a class.')
  for (const key of Object.keys(raw)) if (!ruleWords.includes(key)) problems.add('unknown-key', [key], `A rule has no "${key}".`, nearestIn(key, ruleWords))
  const name = typeof raw.name === 'string' ? raw.name : ''
  if (name === '') problems.add('missing-key', ['name'], 'A rule has a name, so that its results and faults can be told apart.')
  if (taken.has(name)) problems.add('duplicate-id', ['name'], `There is a rule "${name}" already.`)
  const of = typeof raw.of === 'string' ? raw.of : describe(raw.of)
  const kinds = catalogue.model.kindsIn.get(of)
  if (kinds === undefined) problems.add('unknown-kind', ['of'], `There is no kind or family "${of}".`, nearestIn(of, catalogue.model.kindsIn.keys()))
  const event = readEvent(raw.event)
  if (event === undefined) problems.add('bad-event', ['event'], `An event has a type, and the engine itself tells ${ownEvents.join(', ')}.`)
  const conditions = readHostConditions(raw.conditions, ['conditions'], { ...place, ...(kinds === undefined ? {} : { of }), problems })
  if (conditions === undefined || event === undefined || kinds === undefined || problems.found.length > 0) throw new UnusableHostContent(problems.found.map((problem) => ({ ...problem, file: `rule ${name}` })))
  const { priority, onSuccess, onFailure } = raw
  return {
    of,
    kinds,
    properties: { name, conditions, event, ...(typeof priority === 'number' ? { priority } : {}) },
    handlers: { success: handlerOf(onSuccess), failure: handlerOf(onFailure) },
  }
}

function readEvent(raw: unknown): AskedWords['properties']['event'] | undefined {
  if (!isMap(raw) || typeof raw.type !== 'string' || ownEvents.includes(raw.type)) return undefined
  return { type: raw.type, ...(isMap(raw.params) ? { params: { ...raw.params } } : {}) }
}

function handlerOf(raw: unknown): AskedWords['handlers']['success'] {
  return typeof raw === 'function' ? (...told) => Reflect.apply(raw, undefined, told) as unknown : undefined
}

function refusal(code: string, message: string): UnusableHostContent {
  return new UnusableHostContent([{ code, pointer: '', message }])
}
