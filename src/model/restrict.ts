import type { Entry } from './entry.js'
import type { LeafField } from './field.js'
import type { Installation } from './installation.js'
import type { Model } from './model.js'
import { byKind, totalOf } from './reading/index.js'
import type { PartList, PathItem, Thing } from './thing.js'

/** What stays known when an installation is looked at more strictly. */
export interface Keep {
  readonly thing: (thing: Thing) => boolean
  readonly entry: (entry: Entry, thing: Thing) => boolean
}

/** The installation with less said: things and values that are not kept are forgotten, counts stay as stated. */
export function restrict(installation: Installation, keep: Keep): Installation {
  const kept = new Set([...installation.things.values()].filter(keep.thing).map((thing) => thing.id))
  const isKept = (id: string): boolean => kept.has(id) || !installation.things.has(id)
  const { leaves } = installation.model
  const things = new Map(
    [...installation.things].flatMap(([id, thing]) =>
      kept.has(id) ? [[id, restrictThing(thing, { keep, isKept, leaves })] as const] : [],
    ),
  )
  const counts = new Map([...installation.counts].filter(([, entry]) => entry.standing === 'stated'))
  return Object.freeze({ ...installation, things, ofKind: byKind(things), total: totalOf(things), counts })
}

interface Restricting {
  readonly keep: Keep
  readonly leaves: Model['leaves']
  readonly isKept: (id: string) => boolean
}

// Plain loops: a house has hundreds of entries, and a photo is asked for on every check.
function restrictThing(thing: Thing, { keep, isKept, leaves }: Restricting): Thing {
  const fields = leaves.get(thing.kind.name)
  const entries: Record<string, Entry> = {}
  for (const name of Object.keys(thing.entries)) {
    const entry = thing.entries[name]
    if (entry === undefined || !keep.entry(entry, thing)) continue
    const left = isReference(fields?.get(name)) ? restrictEntry(entry, isKept) : entry
    if (left !== undefined) entries[name] = left
  }
  const parts: Record<string, PartList> = {}
  for (const [name, list] of Object.entries(thing.parts))
    parts[name] = restrictParts(list, thing, { keep, isKept, leaves })
  const path = thing.path === undefined ? {} : { path: thing.path.map((item) => restrictItem(item, isKept)) }
  return { ...thing, entries, parts, ...path }
}

function restrictEntry(entry: Entry, isKept: (id: string) => boolean): Entry | undefined {
  const { value } = entry
  if (value.type === 'word') return isKept(value.word) ? entry : undefined
  if (value.type !== 'list' || value.members.every(isKept)) return entry
  return { ...entry, value: { ...value, members: value.members.filter(isKept), complete: false } }
}

function restrictParts(list: PartList, owner: Thing, { keep, isKept }: Restricting): PartList {
  const stated =
    list.stated !== undefined && list.stated.standing === 'stated' && keep.entry(list.stated, owner)
      ? { stated: list.stated }
      : {}
  return { ids: list.ids.filter(isKept), ...stated }
}

function restrictItem(item: PathItem, isKept: (id: string) => boolean): PathItem {
  return item.type === 'unknown' || isKept(item.component) ? item : { type: 'unknown' }
}

function isReference(field: LeafField | undefined): boolean {
  return field?.type === 'reference' || (field?.type === 'list' && field.of.type === 'reference')
}
