import { standings, type Entry, type Standing } from '../entry.js'
import type { KindSpec } from '../kind.js'
import type { LeafField } from '../field.js'
import type { Model } from '../model.js'
import { pointerOf } from '../problem.js'
import type { PartList, Thing } from '../thing.js'
import { nearestIn, type ProblemList, type Steps } from './problems.js'
import { oneOf, readEntry } from './read-entry.js'
import { describe, isMap, listAt, mapAt, textOf } from './shapes.js'

const ownKeys = ['id', 'kind', 'name', 'standing', 'evidence', 'medium', 'path']

export interface ThingReading {
  readonly model: Model
  readonly problems: ProblemList
  readonly steps: Steps
}

/** A thing with its parts: the thing first. */
export function readThing(
  id: string,
  kind: KindSpec,
  raw: Readonly<Record<string, unknown>>,
  reading: ThingReading,
  owner?: Thing,
): readonly Thing[] {
  const { model, problems, steps } = reading
  const said =
    raw.standing === undefined
      ? 'stated'
      : (oneOf(standings, raw.standing, [...steps, 'standing'], problems) ?? 'stated')
  const standing = owner !== undefined && said === 'stated' ? owner.standing : said
  const fields = model.leaves.get(kind.name) ?? new Map<string, LeafField>()
  const answers = model.answers.get(kind.name) ?? new Map<string, LeafField>()
  reportUnknownKeys(raw, kind, reading)
  const name = textOf(raw.name)
  const bare: Thing = {
    id,
    kind,
    ...(name === undefined ? {} : { name }),
    standing,
    entries: {},
    parts: {},
    ...(owner === undefined ? {} : { owner: owner.id }),
    evidence: evidenceOf(raw, reading, owner),
    pointer: pointerOf(steps),
  }
  const entries = {
    ...readFields(fields, raw, { ...reading, standing }),
    ...readFields(answers, raw, { ...reading, standing, answers: true }),
  }
  const parts = Object.entries(kind.parts).flatMap(([list, part]) => {
    const found = readParts(list, part, raw[list], { ...reading, owner: bare })
    return found === undefined ? [] : [{ list, ...found }]
  })
  const saidUnknown = [...fields.keys()].filter((field) => isUnknown(raw[field]))
  const thing: Thing = {
    ...bare,
    ...(saidUnknown.length === 0 ? {} : { saidUnknown }),
    entries,
    parts: Object.fromEntries(parts.map(({ list, partList }) => [list, partList])),
  }
  return [thing, ...parts.flatMap(({ things }) => things)]
}

function isUnknown(value: unknown): boolean {
  return textOf(isMap(value) ? value.value : value) === 'unknown'
}

/** Entries of every field that is written, groups opened. */
export function readFields(
  fields: ReadonlyMap<string, LeafField>,
  raw: Readonly<Record<string, unknown>>,
  reading: ThingReading & { readonly standing: Standing; readonly answers?: boolean },
): Readonly<Record<string, Entry>> {
  const entries: Record<string, Entry> = {}
  for (const [name, field] of fields) {
    const path = pathOf(name)
    const value = path.reduce<unknown>((at, step) => (isMap(at) && Object.hasOwn(at, step) ? at[step] : undefined), raw)
    if (value === undefined) continue
    const wantsWithin = reading.answers === true && field.type === 'quantity'
    const entry = readEntry(field, value, { ...reading, steps: [...reading.steps, ...path], wantsWithin })
    if (entry !== undefined) entries[name] = entry
  }
  return entries
}

function pathOf(name: string): readonly string[] {
  return name.includes('.') ? name.split('.') : [name]
}

/** Every name that may be written in a thing of a kind. */
export function keysOf(kind: KindSpec, model: Model): readonly string[] {
  const fields = [...(model.leaves.get(kind.name)?.keys() ?? []), ...(model.answers.get(kind.name)?.keys() ?? [])]
  const line = kind.section === 'lines'
  const own = ownKeys.filter((key) => line || (key !== 'medium' && key !== 'path'))
  return [...own, ...new Set(fields.map((name) => name.split('.')[0] ?? name)), ...Object.keys(kind.parts)]
}

function reportUnknownKeys(
  raw: Readonly<Record<string, unknown>>,
  kind: KindSpec,
  { model, problems, steps }: ThingReading,
): void {
  for (const [key, value] of Object.entries(raw)) {
    const field = Object.hasOwn(kind.fields, key) ? kind.fields[key] : undefined
    if (field?.type === 'group') reportGroup(value, Object.keys(field.fields), { problems, steps: [...steps, key] })
    else if (!isKey(key, kind, model))
      problems.add(
        'unknown-key',
        [...steps, key],
        `A ${kind.spoken} has no "${key}".`,
        nearestIn(key, keysOf(kind, model)),
      )
  }
}

function isKey(key: string, kind: KindSpec, model: Model): boolean {
  if (key.startsWith('x-')) return true
  if (key === 'medium' || key === 'path') return kind.section === 'lines'
  const field = model.leaves.get(kind.name)?.has(key) === true || model.answers.get(kind.name)?.has(key) === true
  return field || Object.hasOwn(kind.parts, key) || ownKeys.includes(key)
}

function reportGroup(
  value: unknown,
  members: readonly string[],
  { problems, steps }: Pick<ThingReading, 'problems' | 'steps'>,
): void {
  if (textOf(value) === 'unknown') return
  const map = mapAt(value, steps, problems) ?? {}
  for (const key of Object.keys(map)) {
    if (!members.includes(key))
      problems.add(
        'unknown-key',
        [...steps, key],
        `"${String(steps.at(-1))}" has no "${key}".`,
        nearestIn(key, members),
      )
  }
}

function evidenceOf(
  raw: Readonly<Record<string, unknown>>,
  { problems, steps }: ThingReading,
  owner?: Thing,
): readonly string[] {
  const own = listAt(raw.evidence, [...steps, 'evidence'], problems).flatMap((id) => textOf(id) ?? [])
  return owner === undefined ? own : [...new Set([...own, ...owner.evidence])]
}

interface PartsFound {
  readonly partList: PartList
  readonly things: readonly Thing[]
}

function readParts(
  name: string,
  kind: KindSpec,
  raw: unknown,
  reading: ThingReading & { readonly owner: Thing },
): PartsFound | undefined {
  if (raw === undefined || textOf(raw) === 'unknown') return undefined
  const steps = [...reading.steps, name]
  const counted = isMap(raw)
  const stray = counted ? Object.keys(raw).filter((key) => key !== 'complete' && key !== 'list') : []
  for (const key of stray)
    reading.problems.add(
      'unknown-key',
      [...steps, key],
      `A list of parts has no "${key}".`,
      nearestIn(key, ['complete', 'list']),
    )
  const stated = counted
    ? readEntry({ type: 'quantity', quantity: 'count' }, raw.complete, {
        problems: reading.problems,
        steps: [...steps, 'complete'],
        standing: reading.owner.standing,
      })
    : undefined
  const items = listAt(counted ? raw.list : raw, counted ? [...steps, 'list'] : steps, reading.problems)
  const things = items.flatMap((item, index) =>
    readPart(kind, item, { ...reading, steps: counted ? [...steps, 'list', index] : [...steps, index] }),
  )
  return { partList: { ...(stated === undefined ? {} : { stated }), ids: things.map((thing) => thing.id) }, things }
}

function readPart(kind: KindSpec, raw: unknown, reading: ThingReading & { readonly owner: Thing }): readonly Thing[] {
  const { steps, problems, owner } = reading
  if (!isMap(raw)) {
    problems.add('not-a-map', steps, `A ${kind.spoken} is written as names with values.`, { received: describe(raw) })
    return []
  }
  const id = textOf(raw.id)
  if (id !== undefined && isId(id)) return readThing(`${owner.id}/${id}`, kind, raw, reading, owner)
  problems.add(
    'bad-id',
    [...steps, 'id'],
    `A ${kind.spoken} needs an id of letters, digits and "-", beginning with a letter.`,
    { received: id ?? 'nothing' },
  )
  return []
}

export function isId(word: string): boolean {
  return /^[A-Za-z][A-Za-z0-9-]*$/.test(word)
}
