import { restrict, type Contradiction, type Entry, type Installation, type Thing } from '../model/index.js'
import { judgeFact } from './ask.js'
import type { Catalogue } from './catalogue.js'
import { combine } from './combine.js'
import { answerOf } from './own-answer.js'
import { openView, type View } from './view.js'

/** Everything that can be asked about one installation. */
export interface Facts {
  readonly installation: Installation
  readonly catalogue: Catalogue
  /** Only what is stated: for demands at `stop` and `must`. */
  readonly strict: View
  /** Assumptions included: for demands at `should` and `advice`. */
  readonly whole: View
  /** The same, with every value forgotten that no photo shows. */
  readonly photographed: (view: View) => View
  /** Contradictions in the document, those between statement and trace included. */
  readonly contradictions: readonly Contradiction[]
}

/** Makes an installation ready to be asked. Nothing is computed before it is needed. */
export function gatherFacts(installation: Installation, catalogue: Catalogue): Facts {
  const assumes =
    [...installation.things.values()].some(
      (thing) =>
        thing.standing !== 'stated' ||
        Object.values(thing.entries).some(isAssumed) ||
        Object.values(thing.parts).some((parts) => parts.stated !== undefined && isAssumed(parts.stated)),
    ) || [...installation.counts.values()].some(isAssumed)
  const strict = openView(
    assumes
      ? restrict(installation, { thing: (thing) => thing.standing === 'stated', entry: (entry) => !isAssumed(entry) })
      : installation,
  )
  const whole = assumes ? openView(installation, strict) : strict
  const proved = new Map<View, View>()
  const photographed = (view: View): View => {
    const made =
      proved.get(view) ??
      openView(
        restrict(view.installation, {
          thing: () => true,
          entry: (entry, thing) => isPhotographed(entry, thing, view.installation),
        }),
      )
    proved.set(view, made)
    return made
  }
  return {
    installation,
    catalogue,
    strict,
    whole,
    photographed,
    get contradictions() {
      return [...installation.contradictions, ...flowContradictions(strict), ...answerContradictions(catalogue, strict)]
    },
  }
}

function isAssumed(entry: Entry): boolean {
  return entry.standing !== 'stated'
}

/** Evidence of the thing covers its entries; only photos count here. */
function isPhotographed(entry: Entry, thing: Thing, installation: Installation): boolean {
  return [...entry.evidence, ...thing.evidence].some((id) => {
    const type = installation.things.get(id)?.entries.type
    return type?.value.type === 'word' && type.value.word === 'photo'
  })
}

/** Pumps and other parts with a direction that are drawn against each other. */
function flowContradictions(view: View): readonly Contradiction[] {
  const colliding = view.network().flow().disputes?.components ?? []
  const [first] = colliding
  if (first === undefined) return []
  const message = `The directions at ${colliding.join(', ')} cannot all be right as drawn: the water would have nowhere to go, or come from nowhere.`
  return [{ code: 'flows-collide', subject: first, fact: 'lines', message }]
}

/** Stated answers that the drawing or the calculation disproves. */
function answerContradictions(catalogue: Catalogue, view: View): readonly Contradiction[] {
  return [...view.installation.things.values()].flatMap((thing) => {
    const names = [...(view.installation.model.answers.get(thing.kind.name)?.keys() ?? [])].filter(
      (name) => thing.entries[name] !== undefined,
    )
    return names.flatMap((name) => contradictionOf(catalogue, view, thing, name))
  })
}

function contradictionOf(catalogue: Catalogue, view: View, thing: Thing, name: string): readonly Contradiction[] {
  const handle = catalogue.derived(thing.kind.name, name)
  const entry = thing.entries[name]
  if (handle === undefined || entry === undefined) return []
  const traced = tryJudge(catalogue, view, thing, handle)
  if (traced === undefined || combine(traced, answerOf(entry, { subject: thing.id, fact: name })).agree) return []
  const way = traced.witness === undefined ? '' : ` (${traced.witness.join(' -> ')})`
  const found = traced.state === 'word' ? traced.word : 'something else'
  return [
    {
      code: 'answer-against-trace',
      subject: thing.id,
      fact: name,
      message: `${thing.id} is said to have ${name} ${entry.text}; what is drawn says ${found}${way}.`,
    },
  ]
}

/** A fact that throws breaks the rules that use it; it contradicts nothing. */
function tryJudge(...asked: Parameters<typeof judgeFact>): ReturnType<typeof judgeFact> | undefined {
  try {
    return judgeFact(...asked)
  } catch {
    return undefined
  }
}
