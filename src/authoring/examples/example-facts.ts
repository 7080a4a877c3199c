import {
  factNames,
  openView,
  resolveFact,
  unknown,
  word,
  type Answer,
  type Catalogue,
  type Facts,
  type View,
} from '../../facts/index.js'
import {
  byKind,
  problemList,
  readEntry,
  readInstallation,
  type Entry,
  type Installation,
  type Thing,
} from '../../model/index.js'
import type { Rule } from '../../rulebook/index.js'
import { idFor, placeOf, subjectId, type FactPlace } from './fact-place.js'
import { givenAnswer, type Look } from './given-answer.js'

/** A world that holds one subject and what it refers to, in which only the facts of an example are known. */
export interface ExampleFacts {
  readonly facts: Facts
  readonly subject: Thing
}

interface Given {
  readonly place: FactPlace
  readonly entry: Entry | undefined
}

/** Puts the facts of an example in as answers; everything else is unknown, and nothing is traced or computed. */
export function exampleFacts(catalogue: Catalogue, rule: Rule, facts: Readonly<Record<string, unknown>>): ExampleFacts {
  const kind = rule.kinds[0] ?? rule.subject
  const given = Object.entries({ ...authoritiesFor(rule), ...facts }).flatMap(
    ([path, raw]) => readGiven(catalogue, rule, { path, raw, kind }) ?? [],
  )
  const installation = worldFor(catalogue, kind, given)
  const look = (statedOnly: boolean, photoOnly: boolean): View =>
    viewOf(catalogue, installation, given, { statedOnly, photoOnly })
  const [strict, whole, strictPhotos, wholePhotos] = [
    look(true, false),
    look(false, false),
    look(true, true),
    look(false, true),
  ]
  const photographed = (view: View): View => (view === strict ? strictPhotos : wholePhotos)
  const subject = installation.things.get(idFor(catalogue, kind))
  if (subject === undefined) throw new TypeError(`there is no kind "${kind}"`)
  return { facts: { installation, catalogue, strict, whole, photographed, contradictions: [] }, subject }
}

/** A rule that an authority adds speaks where that authority is named. */
function authoritiesFor({ demands }: Rule): Readonly<Record<string, unknown>> {
  const own = demands[0]?.authority
  return { 'jurisdiction.authorities': own === undefined || own.layer === 'base' ? [] : [own.id] }
}

interface GivenFact {
  readonly path: string
  readonly raw: unknown
  readonly kind: string
}

function readGiven(catalogue: Catalogue, rule: Rule, { path, raw, kind }: GivenFact): Given | undefined {
  const found = resolveFact(catalogue, rule.subject, path)
  const place = placeOf(
    catalogue,
    kind,
    path.startsWith(`${rule.subject}.`) ? `${kind}${path.slice(rule.subject.length)}` : path,
  )
  if (!found.ok || place === undefined) return undefined
  return { place, entry: readEntry(found.fact.type, raw, { steps: [], problems: problemList(), standing: 'stated' }) }
}

function worldFor(catalogue: Catalogue, kind: string, given: readonly Given[]): Installation {
  const { model } = catalogue
  const empty = readInstallation({ installation: '1' }, model)
  const owner = model.ownerOf.get(kind)?.kind
  const referred = given.map(({ place }) => ({ id: place.thing, kind: place.kind }))
  const wanted = [
    { id: idFor(catalogue, kind), kind },
    ...(owner === undefined ? [] : [{ id: owner, kind: owner }]),
    ...referred,
  ]
  const things = new Map(empty.things)
  for (const one of wanted) if (!things.has(one.id)) things.set(one.id, thingOf(catalogue, one))
  return Object.freeze({ ...empty, things, ofKind: byKind(things) })
}

function thingOf({ model }: Catalogue, { id, kind: name }: { readonly id: string; readonly kind: string }): Thing {
  const kind = model.kinds.get(name)
  if (kind === undefined) throw new TypeError(`there is no kind "${name}"`)
  const owner = model.ownerOf.get(name)?.kind
  return {
    id,
    kind,
    standing: 'stated',
    entries: {},
    parts: {},
    evidence: [],
    pointer: '',
    ...(owner === undefined ? {} : { owner }),
  }
}

/** Every answer is remembered beforehand, so that judging finds it and looks no further. */
function viewOf(catalogue: Catalogue, installation: Installation, given: readonly Given[], look: Look): View {
  const view = openView(installation)
  for (const thing of installation.things.values()) view.remembered.set(thing, nothingKnown(catalogue, thing))
  for (const { place } of given)
    if (place.reference !== undefined)
      remember(view, installation.things.get(subjectId), place.reference, word(place.thing))
  for (const { place, entry } of given) {
    remember(
      view,
      installation.things.get(place.thing),
      place.fact,
      givenAnswer(entry, look, { subject: place.thing, fact: place.fact }),
    )
  }
  return view
}

function remember(view: View, thing: Thing | undefined, fact: string, answer: Answer): void {
  if (thing !== undefined) view.remembered.get(thing)?.set(fact, answer)
}

function nothingKnown(catalogue: Catalogue, thing: Thing): Map<string, Answer> {
  return new Map(
    factNames(catalogue, thing.kind.name).map((fact) => [fact, unknown({ missing: [{ subject: thing.id, fact }] })]),
  )
}
