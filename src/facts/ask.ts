import type { Model, Thing } from '../model/index.js'
import { between, isSettled, unknown, type Answer, type Missing } from './answer.js'
import { combine, refine } from './combine.js'
import type { Catalogue } from './catalogue.js'
import type { Context, FactHandle } from './fact.js'
import { listingOf, moreOf, moreParts, partsOf } from './listing.js'
import { answerOf } from './own-answer.js'
import type { View } from './view.js'

/** Asks facts of things in one view. The same question has the same answer, found once. */
export function askFact(catalogue: Catalogue, view: View, thing: Thing, fact: string): Answer {
  if (thing.unlisted === true) return unknown({ missing: [{ subject: thing.kind.name, fact: 'count' }] })
  const remembered = view.remembered.get(thing) ?? remember(view, thing)
  const before = remembered.get(fact)
  if (before === inProgress) throw new Error(`the fact ${thing.kind.name}.${fact} asks for itself`)
  if (before !== undefined) return before
  remembered.set(fact, inProgress)
  try {
    const answer = answerFact(catalogue, view, thing, fact)
    remembered.set(fact, answer)
    return answer
  } catch (reason) {
    remembered.delete(fact)
    throw reason
  }
}

const inProgress: Answer = Object.freeze(unknown())

function remember(view: View, thing: Thing): Map<string, Answer> {
  const fresh = new Map<string, Answer>()
  view.remembered.set(thing, fresh)
  return fresh
}

function answerFact(catalogue: Catalogue, view: View, thing: Thing, fact: string): Answer {
  const derived = catalogue.derived(thing.kind.name, fact)
  if (derived !== undefined) return answerDerived(catalogue, view, thing, derived)
  const { model } = view.installation
  if (model.leaves.get(thing.kind.name)?.has(fact) === true)
    return answerOf(thing.entries[fact], { subject: thing.id, fact })
  if (Object.hasOwn(thing.kind.parts, fact)) return countParts(thing, fact)
  return countReferring(view, thing, { fact, model })
}

/** The stricter view's answer stands where it is settled; elsewhere trace, statement and assumption are put together. */
function answerDerived(catalogue: Catalogue, view: View, thing: Thing, fact: FactHandle): Answer {
  const strict = stricterAnswer(catalogue, view, thing, fact)
  if (strict !== undefined && isSettled(strict)) return strict
  const traced = judgeFact(catalogue, view, thing, fact)
  const offered = fact.answerable ? orStated(traced, thing, fact) : traced
  return strict === undefined ? offered : refine(strict, offered)
}

/** A trace with what the document states in its place. */
function orStated(traced: Answer, thing: Thing, fact: FactHandle): Answer {
  const { answer } = combine(traced, answerOf(thing.entries[fact.name], { subject: thing.id, fact: fact.name }))
  return isSettled(answer)
    ? answer
    : { ...answer, missing: withOwn(answer.missing, { subject: thing.id, fact: fact.name }) }
}

function stricterAnswer(catalogue: Catalogue, view: View, thing: Thing, fact: FactHandle): Answer | undefined {
  const same = view.stricter?.installation.things.get(thing.id)
  return view.stricter === undefined || same === undefined
    ? undefined
    : askFact(catalogue, view.stricter, same, fact.name)
}

function withOwn(missing: readonly Missing[], own: Missing): readonly Missing[] {
  return missing.some((one) => one.subject === own.subject && one.fact === own.fact) ? missing : [...missing, own]
}

/** What code finds out, without regard to what the document states as the answer. */
export function judgeFact(catalogue: Catalogue, view: View, thing: Thing, fact: FactHandle): Answer {
  const used: Answer[] = []
  return withTrail(fact.read(contextIn(catalogue, view, thing, used)), used)
}

/** All that code may see while it looks at one thing; every answer that it gets is noted in `used`. */
export function contextIn(catalogue: Catalogue, view: View, thing: Thing, used: Answer[] = []): Context {
  const { installation } = view
  return {
    subject: thing,
    installation,
    ask: (asked, of = thing) => {
      const answer = askFact(catalogue, view, of, typeof asked === 'string' ? asked : asked.name)
      used.push(answer)
      return answer
    },
    find: (id) => installation.things.get(id),
    listed: (kind) => listingOf(installation, typeof kind === 'string' ? kind : kind.name),
    parts: (name, of = thing) => partsOf(installation, of, name),
    get network() {
      return view.network()
    },
  }
}

function withTrail(answer: Answer, used: readonly Answer[]): Answer {
  const assumed = answer.assumed || used.some((one) => one.assumed)
  const stated = answer.stated || used.some((one) => one.stated)
  const missing = isSettled(answer) || answer.missing.length > 0 ? answer.missing : used.flatMap((one) => one.missing)
  return { ...answer, assumed, stated, missing: unique(missing) }
}

function unique(missing: readonly Missing[]): readonly Missing[] {
  if (missing.length < 2) return missing
  return [...new Map(missing.map((one) => [`${one.subject} ${one.fact}`, one])).values()]
}

function countParts(owner: Thing, name: string): Answer {
  const listed = owner.parts[name]?.ids.length ?? 0
  const more = moreParts(owner, name)
  return between(listed, listed + more, { missing: more > 0 ? [{ subject: owner.id, fact: name }] : [] })
}

/** How many things refer to this one: those that do, up to those that may and those not listed. */
function countReferring(view: View, thing: Thing, { fact, model }: { fact: string; model: Model }): Answer {
  const inverse = (model.inverse.get(thing.kind.name) ?? []).filter((one) => one.countedAs === fact)
  if (inverse.length === 0) throw new Error(`a ${thing.kind.spoken} has no fact "${fact}"`)
  const counts = view.inverse()
  const sure = counts.referring(thing.id, fact)
  const open = inverse.flatMap((one) => counts.undecided(one.kind, one.field))
  const unlisted = inverse.map((one) => ({ kind: one.kind, more: moreOf(view.installation, one.kind) }))
  const more = unlisted.reduce((sum, one) => sum + one.more, 0)
  const missing = [
    ...open,
    ...unlisted.filter((one) => one.more > 0).map((one) => ({ subject: one.kind, fact: 'count' })),
  ]
  const assumed = sure.some(
    (id) => view.installation.things.get(id)?.entries[inverse[0]?.field ?? '']?.standing !== 'stated',
  )
  return between(sure.length, sure.length + open.length + more, { missing, assumed, witness: sure })
}
