import type { KindSpec, Medium } from '../kind.js'
import type { Contradiction, Installation } from '../installation.js'
import type { Model } from '../model.js'
import { media } from '../ports.js'
import type { Problem } from '../problem.js'
import type { Thing } from '../thing.js'
import { checkBounds } from './bounds.js'
import { type ThingSection, thingSections } from '../list-sections.js'
import { checkLinks } from './check-links.js'
import { countContradictions, totalOf } from './count-contradictions.js'
import { nearestIn, problemList, type ProblemList, type Steps } from './problems.js'
import { equip, type Equipment } from './read-equipment.js'
import { readApproved, readCounts, readKept, readPhase, type Kept } from './read-frame.js'
import { oneOf, reservedWords } from './read-entry.js'
import { readPath } from './read-path.js'
import { isId, readThing } from './read-thing.js'
import { describe, isMap, listAt, mapAt, textOf } from './shapes.js'

const frameKeys = [
  'installation',
  'name',
  'phase',
  'units',
  'none',
  'complete',
  'kept',
  'removed',
  'approved',
  ...thingSections,
]

/** An installation as read, or every problem that keeps it from being read. */
export type InstallationRead =
  | { readonly ok: true; readonly installation: Installation }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/**
 * Reads a written document into an installation, or tells every problem at once. Never throws for what a person wrote.
 *
 * @param document plain data, all scalars text
 * @param model the kinds that the rulebook knows
 * @param equipment makers' data by name, as `use:` gives it; a name that is not there leaves unknowns
 */
export function tryReadInstallation(
  document: unknown,
  model: Model,
  equipment: readonly Equipment[] = [],
): InstallationRead {
  const problems = problemList()
  if (!checkBounds(document, problems)) return { ok: false, problems: problems.found }
  const raw = mapAt(document, [], problems) ?? {}
  const singletons = [...model.kinds.values()].filter((kind) => kind.section === 'singleton')
  reportUnknownSections(raw, singletons, problems)
  const reading = { model, problems }
  const kept = readKept(raw.kept, problems)
  const listed = thingSections.flatMap((section) => readSection(section, raw[section], reading))
  const alone = singletons.flatMap((kind) => readSingleton(kind, raw[kind.name], reading))
  const shelf = new Map(equipment.map((item) => [item.name, item]))
  const equipped = [...alone, ...listed].map((thing) => equip(thing, shelf))
  const worked = equipped.flatMap(({ things }) => things).map((thing) => withWork(thing, kept))
  const things = uniqueThings(
    worked.map(({ thing }) => thing),
    problems,
  )
  const withPaths = readPaths(things, raw.lines, reading)
  const removed = listAt(raw.removed, ['removed'], problems).flatMap((item, index) =>
    readComponent(item, ['removed', index], reading),
  )
  checkKept(kept, things, problems)
  checkLinks(withPaths, model, problems)
  const counts = readCounts(raw, model, problems)
  const approved = readApproved(raw.approved, problems)
  const phase = readPhase(raw.phase, problems)
  const units = raw.units === undefined ? 'ip' : (oneOf(['ip', 'si'], raw.units, ['units'], problems) ?? 'ip')
  const name = textOf(raw.name)
  if (problems.found.length > 0) return { ok: false, problems: problems.found }
  const contradictions: readonly Contradiction[] = [
    ...equipped.flatMap((item) => item.contradictions),
    ...worked.flatMap((item) => item.contradiction ?? []),
    ...countContradictions(withPaths, counts, model),
  ]
  const frame = { ...(name === undefined ? {} : { name }), ...(phase === undefined ? {} : { phase }) }
  return {
    ok: true,
    installation: Object.freeze({
      model,
      ...frame,
      units,
      things: withPaths,
      ofKind: byKind(withPaths),
      total: totalOf(withPaths),
      counts,
      removed,
      approved,
      contradictions,
    }),
  }
}

interface Reading {
  readonly model: Model
  readonly problems: ProblemList
}

/** Things by kind, in the order of the document. */
export function byKind(things: ReadonlyMap<string, Thing>): ReadonlyMap<string, readonly Thing[]> {
  const found = new Map<string, Thing[]>()
  for (const thing of things.values()) {
    const list = found.get(thing.kind.name)
    if (list === undefined) found.set(thing.kind.name, [thing])
    else list.push(thing)
  }
  return found
}

function reportUnknownSections(
  raw: Readonly<Record<string, unknown>>,
  singletons: readonly KindSpec[],
  problems: ProblemList,
): void {
  const known = [...frameKeys, ...singletons.map((kind) => kind.name)]
  for (const key of Object.keys(raw)) {
    if (!known.includes(key) && !key.startsWith('x-'))
      problems.add('unknown-key', [key], `A document has no "${key}".`, nearestIn(key, known))
  }
  const version = textOf(raw.installation)
  if (version === '1') return
  if (version === undefined)
    problems.add('no-version', [], 'A document begins with "installation: 1", the version of its schema.', {
      nearest: 'installation: 1',
    })
  else problems.add('wrong-version', ['installation'], `This reads documents of version 1, not ${version}.`)
}

function readSingleton(kind: KindSpec, raw: unknown, { model, problems }: Reading): readonly Thing[] {
  const steps = [kind.name]
  const map = kind.name === 'installation' ? {} : (mapAt(raw, steps, problems) ?? {})
  return readThing(kind.name, kind, map, { model, problems, steps })
}

function readSection(section: ThingSection, raw: unknown, reading: Reading): readonly Thing[] {
  const items = listAt(raw, [section], reading.problems)
  if (section === 'components') return items.flatMap((item, index) => readComponent(item, [section, index], reading))
  const kind = [...reading.model.kinds.values()].find((candidate) => candidate.section === section)
  if (kind === undefined) return []
  return items.flatMap((item, index) => readItem(kind, item, [section, index], reading))
}

function readComponent(raw: unknown, steps: Steps, reading: Reading): readonly Thing[] {
  const { model, problems } = reading
  if (!isMap(raw)) {
    problems.add('not-a-map', steps, 'A component is written as names with values.', { received: describe(raw) })
    return []
  }
  const word = textOf(raw.kind) ?? ''
  const kinds = [...model.kinds.values()].filter((kind) => kind.section === 'components')
  const kind = kinds.find((candidate) => candidate.name === word)
  if (kind !== undefined) return readItem(kind, raw, steps, reading)
  problems.add(
    'unknown-kind',
    [...steps, 'kind'],
    word === '' ? 'A component names its kind.' : `There is no kind "${word}".`,
    nearestIn(
      word,
      kinds.map((candidate) => candidate.name),
    ),
  )
  return []
}

function readItem(kind: KindSpec, raw: unknown, steps: Steps, reading: Reading): readonly Thing[] {
  const { model, problems } = reading
  if (!isMap(raw)) {
    problems.add('not-a-map', steps, `A ${kind.spoken} is written as names with values.`, { received: describe(raw) })
    return []
  }
  if (kind.section === 'states') return readState(kind, raw, steps, reading)
  const written = Array.isArray(raw.id) ? raw.id : [raw.id]
  return written.flatMap((item) => {
    const id = textOf(item) ?? ''
    const taken = reservedWords.includes(id) || model.kinds.get(id)?.section === 'singleton'
    if (isId(id) && !taken) return readThing(id, kind, raw, { model, problems, steps })
    const why = taken
      ? `"${id}" is a word with a meaning of its own.`
      : `A ${kind.spoken} needs an id of letters, digits and "-", beginning with a letter.`
    problems.add('bad-id', [...steps, 'id'], why, { received: id === '' ? 'nothing' : id })
    // Read all the same, so that its other mistakes are told in the same run.
    readThing(id, kind, raw, { model, problems, steps })
    return []
  })
}

function readState(
  kind: KindSpec,
  raw: Readonly<Record<string, unknown>>,
  steps: Steps,
  { model, problems }: Reading,
): readonly Thing[] {
  const name = textOf(raw.name)
  if (name !== undefined && name !== '') return readThing(`state ${name}`, kind, raw, { model, problems, steps })
  problems.add('no-name', steps, 'A state has a name.', { nearest: 'name' })
  return []
}

function uniqueThings(things: readonly Thing[], problems: ProblemList): ReadonlyMap<string, Thing> {
  const unique = new Map<string, Thing>()
  for (const thing of things) {
    const first = unique.get(thing.id)
    if (first === undefined) unique.set(thing.id, thing)
    else
      problems.add(
        'duplicate-id',
        thing.pointer.split('/').slice(1),
        `"${thing.id}" is the id of another thing already (${first.pointer}).`,
      )
  }
  return unique
}

function readPaths(
  things: ReadonlyMap<string, Thing>,
  raw: unknown,
  { problems }: Reading,
): ReadonlyMap<string, Thing> {
  const items = Array.isArray(raw) ? raw : []
  const kindOf = (id: string): KindSpec | undefined => {
    const kind = things.get(id)?.kind
    return kind?.section === 'components' ? kind : undefined
  }
  return new Map(
    [...things].map(([id, thing]) => {
      if (thing.kind.section !== 'lines') return [id, thing]
      const index = Number(thing.pointer.split('/')[2])
      const item: unknown = items[index]
      const line = isMap(item) ? item : {}
      const medium = oneOf<Medium>(media, line.medium, ['lines', index, 'medium'], problems)
      const steps = ['lines', index, 'path']
      const path = readPath(listAt(line.path, steps, problems), { steps, problems, kindOf, ids: () => things.keys() })
      return [id, { ...thing, path, ...(medium === undefined ? {} : { medium }) }]
    }),
  )
}

function checkKept(kept: Kept | undefined, things: ReadonlyMap<string, Thing>, problems: ProblemList): void {
  for (const [index, id] of [...(kept?.list ?? [])].entries()) {
    if (!things.has(id))
      problems.add('unknown-id', ['kept', 'list', index], `There is no "${id}".`, nearestIn(id, things.keys()))
  }
}

/** Work of a thing: its own word, else the kept list, else what is said of the others. */
function withWork(
  thing: Thing,
  kept: Kept | undefined,
): { readonly thing: Thing; readonly contradiction?: Contradiction } {
  if (kept === undefined || (thing.kind.section !== 'components' && thing.kind.section !== 'lines')) return { thing }
  const inList = kept.list.has(thing.id)
  const own = thing.entries.work
  const listed = inList
    ? ({
        value: { type: 'word', word: 'kept' },
        text: 'kept',
        standing: thing.standing,
        evidence: [],
        pointer: kept.pointer,
      } as const)
    : undefined
  if (own === undefined || (listed !== undefined && own.standing !== 'stated')) {
    const work = listed ?? (thing.saidUnknown?.includes('work') === true ? undefined : kept.others)
    return { thing: work === undefined ? thing : { ...thing, entries: { ...thing.entries, work } } }
  }
  if (listed === undefined || (own.value.type === 'word' && own.value.word === 'kept')) return { thing }
  const message = `${thing.id} is in the list of kept things and said to be ${own.text} itself.`
  return { thing, contradiction: { code: 'work-against-kept', subject: thing.id, fact: 'work', message } }
}
