import type { Entry } from '../entry.js'
import type { KindSpec } from '../kind.js'
import type { Model } from '../model.js'
import type { Contradiction } from '../installation.js'
import type { Problem } from '../problem.js'
import type { PartList, Thing } from '../thing.js'
import { nearestIn, problemList, type ProblemList } from './problems.js'
import { readThing } from './read-thing.js'
import { isMap, mapAt, textOf } from './shapes.js'

/** A maker's data for one model, as read. */
export interface Equipment {
  readonly name: string
  readonly kind: KindSpec
  readonly manual: string
  /** The model as if it were a component, its parts behind it. */
  readonly things: readonly Thing[]
}

export type EquipmentRead =
  { readonly ok: true; readonly equipment: Equipment } | { readonly ok: false; readonly problems: readonly Problem[] }

const frame = ['equipment', 'kind', 'manual']

/** Reads one equipment file: its name, the kind it describes, the manual with page, and that kind's fields. */
export function readEquipment(raw: unknown, model: Model): EquipmentRead {
  const problems = problemList()
  const map = mapAt(raw, [], problems) ?? {}
  const name = textOf(map.equipment)
  const kind = model.kinds.get(textOf(map.kind) ?? '')
  const manual = readManual(map.manual, problems)
  if (name === undefined)
    problems.add('no-name', [], 'An equipment file begins with "equipment:" and its name.', { nearest: 'equipment' })
  if (kind === undefined)
    problems.add(
      'unknown-kind',
      ['kind'],
      `There is no kind "${textOf(map.kind) ?? ''}".`,
      nearestIn(textOf(map.kind) ?? '', model.kinds.keys()),
    )
  if (name === undefined || kind === undefined) return { ok: false, problems: problems.found }
  const fields = Object.fromEntries(Object.entries(map).filter(([key]) => !frame.includes(key)))
  const things = readThing(name, kind, fields, { model, problems, steps: [] })
  if (problems.found.length > 0) return { ok: false, problems: problems.found }
  return { ok: true, equipment: { name, kind, manual, things } }
}

function readManual(raw: unknown, problems: ProblemList): string {
  const map = isMap(raw) ? raw : {}
  const title = textOf(map.title)
  if (title === undefined)
    problems.add(
      'no-manual',
      ['manual'],
      'An equipment file names the manual its figures come from: title, edition, page.',
      { nearest: 'manual: { title: ..., page: ... }' },
    )
  return [title, textOf(map.edition), textOf(map.page) === undefined ? undefined : `page ${textOf(map.page) ?? ''}`]
    .filter((part) => part !== undefined)
    .join(', ')
}

export interface Equipped {
  readonly things: readonly Thing[]
  readonly contradictions: readonly Contradiction[]
}

/** Fills what a thing leaves open from the equipment it uses. What the document states itself wins. */
export function equip(thing: Thing, listed: ReadonlyMap<string, Equipment>): Equipped {
  const use = thing.entries.use
  const equipment = use?.value.type === 'word' ? listed.get(use.value.word) : undefined
  const model = equipment?.things[0]
  if (use === undefined || equipment === undefined || model === undefined || equipment.kind !== thing.kind)
    return { things: [thing], contradictions: [] }
  const lend = (entry: Entry): Entry => ({
    ...entry,
    standing: use.standing,
    evidence: [...new Set([...entry.evidence, ...use.evidence])],
    how: entry.how ?? 'manual',
    equipment: `${equipment.name} (${equipment.manual})`,
  })
  const entries = { ...thing.entries }
  const contradictions: Contradiction[] = []
  for (const [name, lentRaw] of Object.entries(model.entries)) {
    const own = entries[name]
    const lent = lend(lentRaw)
    if (own === undefined || (own.standing !== 'stated' && lent.standing === 'stated')) entries[name] = lent
    else if (own.standing === 'stated' && lent.standing === 'stated' && !sameValue(own, lent))
      contradictions.push(disagreement(thing, name, own, lent))
  }
  const parts = lendParts(thing, equipment, lend)
  return { things: [{ ...thing, entries, parts: parts.lists }, ...parts.things], contradictions }
}

function lendParts(
  thing: Thing,
  equipment: Equipment,
  lend: (entry: Entry) => Entry,
): { lists: Readonly<Record<string, PartList>>; things: readonly Thing[] } {
  const [model, ...lentParts] = equipment.things
  const lists = { ...thing.parts }
  const things: Thing[] = []
  const rename = (id: string): string => `${thing.id}${id.slice(equipment.name.length)}`
  for (const [name, lent] of Object.entries(model?.parts ?? {})) {
    if (lists[name] !== undefined) continue
    lists[name] = { ids: lent.ids.map(rename), ...(lent.stated === undefined ? {} : { stated: lend(lent.stated) }) }
    const borrowed = lentParts.filter((part) => lent.ids.includes(part.id))
    things.push(
      ...borrowed.map((part) => ({
        ...part,
        id: rename(part.id),
        owner: thing.id,
        standing: lentStanding(thing),
        entries: mapEntries(part.entries, lend),
      })),
    )
  }
  return { lists, things }
}

function lentStanding(thing: Thing): Thing['standing'] {
  return thing.entries.use?.standing ?? thing.standing
}

function mapEntries(
  entries: Readonly<Record<string, Entry>>,
  change: (entry: Entry) => Entry,
): Readonly<Record<string, Entry>> {
  return Object.fromEntries(Object.entries(entries).map(([name, entry]) => [name, change(entry)]))
}

function sameValue(a: Entry, b: Entry): boolean {
  const [x, y] = [a.value, b.value]
  if (x.type === 'quantity' && y.type === 'quantity')
    return x.low <= y.high * (1 + 1e-9) && y.low <= x.high * (1 + 1e-9)
  if (x.type === 'list' && y.type === 'list') return [...x.members].sort().join() === [...y.members].sort().join()
  return x.type === 'word' && y.type === 'word' && x.word === y.word
}

function disagreement(thing: Thing, fact: string, own: Entry, lent: Entry): Contradiction {
  return {
    code: 'equipment-against-entry',
    subject: thing.id,
    fact,
    message: `${thing.id} is said to have ${fact} ${own.text}; ${lent.equipment ?? 'its equipment file'} says ${lent.text}.`,
  }
}
