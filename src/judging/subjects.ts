import { moreOf, moreParts, type Facts } from '../facts/index.js'
import type { Installation, KindSpec, Thing } from '../model/index.js'
import { isBinding, type Demand, type Rule } from '../rulebook/index.js'

/** Somebody a rule is asked of, and which of its demands: those on what is stated, those on everything, or both. */
export interface Asked {
  readonly subject: Thing
  readonly binding: boolean
  readonly lesser: boolean
}

/**
 * Whom a rule is asked of: everything listed of its kinds, and one more of each kind whose count is not complete.
 * An assumed thing is judged by its id for lesser demands only; for binding ones it is one more that is not listed.
 */
export function subjectsOf(rule: Rule, facts: Facts): readonly Asked[] {
  return openSubjects(facts)(rule)
}

/** Whom rules are asked of, one after the other: things of a kind are looked for once. */
export function openSubjects(facts: Facts): (rule: Rule) => readonly Asked[] {
  const [strict, whole] = [facts.strict.installation, facts.whole.installation]
  const known = new Map<string, readonly Asked[]>()
  const ofKind = (kind: string): readonly Asked[] => {
    const found = known.get(kind) ?? [...listedOf(kind, strict, whole), ...unlistedOf(kind, strict, whole)]
    known.set(kind, found)
    return found
  }
  return ({ kinds }) => (kinds.length === 1 ? ofKind(kinds[0] ?? '') : kinds.flatMap(ofKind))
}

/** The demands that somebody is asked. */
export function demandsFor({ binding, lesser }: Asked, demands: readonly Demand[]): readonly Demand[] {
  return binding && lesser ? demands : demands.filter((demand) => (isBinding(demand.severity) ? binding : lesser))
}

function listedOf(kind: string, strict: Installation, whole: Installation): readonly Asked[] {
  return (whole.ofKind.get(kind) ?? []).map((subject) => ({
    subject,
    binding: strict === whole || strict.things.has(subject.id),
    lesser: true,
  }))
}

function unlistedOf(kind: string, strict: Installation, whole: Installation): readonly Asked[] {
  const stated = unlistedIn(kind, strict)
  if (strict === whole) return stated.map((subject) => ({ subject, binding: true, lesser: true }))
  const all = unlistedIn(kind, whole)
  const has = (list: readonly Thing[], { id }: Thing): boolean => list.some((one) => one.id === id)
  const both = [...all, ...stated.filter((one) => !has(all, one))]
  return both.map((subject) => ({ subject, binding: has(stated, subject), lesser: has(all, subject) }))
}

function unlistedIn(name: string, installation: Installation): readonly Thing[] {
  const kind = installation.model.kinds.get(name)
  if (kind === undefined) return []
  if (kind.section === 'parts') return unlistedParts(kind, installation)
  return moreOf(installation, name) > 0 ? [oneMore(kind)] : []
}

/** One more part of each owner that may have one, and one of an owner that is not listed itself. */
function unlistedParts(kind: KindSpec, installation: Installation): readonly Thing[] {
  const owner = installation.model.ownerOf.get(kind.name)
  if (owner === undefined) return []
  const owners = (installation.ofKind.get(owner.kind) ?? []).filter((thing) => moreParts(thing, owner.parts) > 0)
  const alone = moreOf(installation, owner.kind) > 0 ? [oneMore(kind)] : []
  return [
    ...owners.map((thing) => ({ ...oneMore(kind), id: `${thing.id}/one more ${kind.name}`, owner: thing.id })),
    ...alone,
  ]
}

function oneMore(kind: KindSpec): Thing {
  return {
    id: `one more ${kind.name}`,
    kind,
    standing: 'stated',
    entries: {},
    parts: {},
    evidence: [],
    pointer: '',
    unlisted: true,
  }
}
