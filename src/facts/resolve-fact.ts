import { nearestName } from '../units/index.js'
import type { LeafField, Model, Thing } from '../model/index.js'
import { unknown, type Answer } from './answer.js'
import { askFact } from './ask.js'
import { factNames, singletonsOf, typeOf, type Catalogue } from './catalogue.js'
import type { View } from './view.js'

/** A fact name of a rule, resolved for its subject. */
export interface ResolvedFact {
  /** As the rule writes it: `ventRun.appliance.work`. */
  readonly path: string
  readonly type: LeafField
  /** Asks it of one subject in one view. */
  readonly ask: (view: View, subject: Thing) => Answer
}

export type Resolution =
  | { readonly ok: true; readonly fact: ResolvedFact }
  | { readonly ok: false; readonly message: string; readonly nearest?: string }

/** Finds what a rule means by `subject.fact`, `subject.reference.fact` or `singleton.fact`. */
export function resolveFact(catalogue: Catalogue, subject: string, path: string): Resolution {
  const [first = '', ...rest] = path.split('.')
  const name = rest.join('.')
  const { model } = catalogue
  if (first === subject) return resolveOn(catalogue, { path, kinds: model.kindsIn.get(subject) ?? [], name, hop: true })
  if (model.kinds.get(first)?.section === 'singleton') return resolveSingleton(catalogue, first, path, name)
  const starts = [subject, ...singletonsOf(model)]
  return refuse(
    `A rule about ${subject} may mention ${subject}.… and ${starts.slice(1).join(', ')}, not "${path}".`,
    nearestPath(first, starts, name),
  )
}

interface Place {
  readonly path: string
  readonly kinds: readonly string[]
  readonly name: string
  readonly hop: boolean
}

function resolveSingleton(catalogue: Catalogue, singleton: string, path: string, name: string): Resolution {
  const type = typeOf(catalogue, singleton, name)
  if (type === undefined)
    return refuse(`"${singleton}" has no fact "${name}".`, near(name, factNames(catalogue, singleton), `${singleton}.`))
  return {
    ok: true,
    fact: {
      path,
      type,
      ask: (view) => {
        const thing = view.installation.things.get(singleton)
        return thing === undefined
          ? unknown({ missing: [{ subject: singleton, fact: name }] })
          : askFact(catalogue, view, thing, name)
      },
    },
  }
}

function resolveOn(catalogue: Catalogue, place: Place): Resolution {
  const { kinds, name, path } = place
  const types = kinds.map((kind) => typeOf(catalogue, kind, name))
  const type = types.find((one) => one !== undefined)
  if (type !== undefined && types.every((one) => one !== undefined)) {
    return { ok: true, fact: { path, type, ask: (view, subject) => askFact(catalogue, view, subject, name) } }
  }
  const dot = name.indexOf('.')
  if (place.hop && dot > 0) return resolveHop(catalogue, place, name.slice(0, dot), name.slice(dot + 1))
  const start = path.slice(0, path.length - name.length)
  return refuse(`"${start.slice(0, -1)}" has no fact "${name}".`, near(name, factNames(catalogue, ...kinds), start))
}

function resolveHop(catalogue: Catalogue, place: Place, reference: string, name: string): Resolution {
  const { model } = catalogue
  const targets = new Set(place.kinds.flatMap((kind) => targetsOf(model, kind, reference)))
  if (targets.size === 0) {
    const start = place.path.slice(0, place.path.length - reference.length - name.length - 1)
    return refuse(
      `"${start.slice(0, -1)}" refers to nothing called "${reference}".`,
      near(reference, factNames(catalogue, ...place.kinds), start),
    )
  }
  const inner = resolveOn(catalogue, { path: place.path, kinds: [...targets], name, hop: false })
  if (!inner.ok) return inner
  return {
    ok: true,
    fact: {
      ...inner.fact,
      ask: (view, subject) => askAcross(catalogue, view, { subject, reference, inner: inner.fact }),
    },
  }
}

function targetsOf(model: Model, kind: string, reference: string): readonly string[] {
  const field = model.leaves.get(kind)?.get(reference)
  if (field?.type === 'reference') return field.to.flatMap((name) => model.kindsIn.get(name) ?? [])
  return model.ownerOf.get(kind)?.kind === reference ? [reference] : []
}

interface Across {
  readonly subject: Thing
  readonly reference: string
  readonly inner: ResolvedFact
}

function askAcross(catalogue: Catalogue, view: View, { subject, reference, inner }: Across): Answer {
  const owner =
    subject.owner === undefined || subject.kind.fields[reference] !== undefined
      ? undefined
      : view.installation.things.get(subject.owner)
  if (owner !== undefined) return inner.ask(view, owner)
  const link = askFact(catalogue, view, subject, reference)
  if (link.state !== 'word') return unknown({ missing: link.missing })
  const target = view.installation.things.get(link.word)
  if (target === undefined) return unknown({ missing: [{ subject: subject.id, fact: reference }] })
  const answer = inner.ask(view, target)
  return link.assumed ? { ...answer, assumed: true } : answer
}

function refuse(message: string, nearest?: string): Resolution {
  return { ok: false, message, ...(nearest === undefined ? {} : { nearest }) }
}

function near(word: string, names: readonly string[], start: string): string | undefined {
  const nearest = nearestName(word, names)
  return nearest === undefined ? undefined : `${start}${nearest}`
}

function nearestPath(first: string, starts: readonly string[], name: string): string | undefined {
  const nearest = nearestName(first, starts)
  return nearest === undefined ? undefined : `${nearest}.${name}`
}
