import { resolveFact, type View } from '../facts/index.js'
import type { Thing } from '../model/index.js'
import { placeholdersIn, plainPlaceholders, type Rule, type Rulebook } from '../rulebook/index.js'
import type { UnitSystem } from '../units/index.js'
import { printAnswer } from './print-answer.js'

export interface Words {
  readonly rulebook: Rulebook
  readonly rule: Rule
  readonly subject: Thing
  readonly view: View
  readonly system: UnitSystem
  /** What {demand} and {authority} stand for. */
  readonly demand: string
  readonly authority: string
}

/** The values of every placeholder in a text. What is not known is said so. */
export function paramsFor(text: string, words: Words): Readonly<Record<string, string>> {
  return Object.fromEntries([...new Set(placeholdersIn(text))].map((name) => [name, valueOf(name, words)]))
}

export function fill(text: string, params: Readonly<Record<string, string>>): string {
  return text.replace(/\{([^{}]*)\}/g, (whole, name: string) =>
    Object.hasOwn(params, name) ? (params[name] ?? whole) : whole,
  )
}

function valueOf(name: string, words: Words): string {
  if (plainPlaceholders.includes(name)) return plainValue(name, words)
  const found = resolveFact(words.rulebook.facts, words.rule.subject, name)
  const told = found.ok
    ? printAnswer(found.fact.ask(words.view, words.subject), found.fact.type, words.system)
    : undefined
  return told ?? 'something not known'
}

function plainValue(name: string, { subject, demand, authority }: Words): string {
  if (name === 'demand') return demand
  if (name === 'authority') return authority
  if (name === 'owner') return subject.owner ?? subject.id
  return spokenId(subject)
}

/** A thing as people call it: its kind and id, with the name it was given. */
export function spokenId(subject: Thing): string {
  if (subject.kind.section === 'singleton') return `the ${subject.kind.spoken}`
  return subject.name === undefined ? subject.id : `${subject.id} (${subject.name})`
}
