import type { LeafField } from '../field.js'
import type { KindSpec } from '../kind.js'
import type { Model } from '../model.js'
import { isMap, textOf } from '../reading/index.js'
import { fieldsOf, singletonsOf } from './fields.js'
import { changeParts } from './part-list.js'
import { at, changeAt, isList, listAt, mapAt, type PlainMap, replaceEach, valueAt, withKey, wordsIn } from './plain.js'
import { kindOf, type ListSection, listSections } from './sections.js'
import { valueOf, withValue } from './written-entry.js'

/** Which ids go, and what stands in their place: `unknown` where less is said, nothing where the house changes. */
export interface Going {
  readonly goes: (id: string) => boolean
  readonly leaves: 'unknown' | 'nothing'
}

/** Rewrites every reference of the document to things that go. */
export function changeReferences(document: PlainMap, model: Model, going: Going): PlainMap {
  const listed = listSections.reduce((sofar, section) => changeSection(sofar, model, going, section), document)
  return singletonsOf(model).reduce((sofar, kind) => changeSingleton(sofar, model, going, kind), listed)
}

function changeSection(document: PlainMap, model: Model, going: Going, section: ListSection): PlainMap {
  if (!isList(at(document, section))) return document
  const items = replaceEach(listAt(document, section), (item) => {
    if (!isMap(item)) return [item]
    const kind = kindOf(model, section, item)
    return [kind === undefined ? item : changeItem(item, model, going, kind)]
  })
  return withKey(document, section, items)
}

function changeSingleton(document: PlainMap, model: Model, going: Going, kind: KindSpec): PlainMap {
  if (!isMap(at(document, kind.name))) return document
  return withKey(document, kind.name, changeItem(mapAt(document, kind.name), model, going, kind))
}

function changeItem(item: PlainMap, model: Model, going: Going, kind: KindSpec): PlainMap {
  const own = referenceNames(model, kind).reduce((sofar, name) => changeReference(sofar, name.split('.'), going), item)
  return Object.entries(kind.parts).reduce(
    (sofar, [parts, part]) => changePartsOf(sofar, parts, model, going, part),
    own,
  )
}

function changePartsOf(item: PlainMap, parts: string, model: Model, going: Going, kind: KindSpec): PlainMap {
  if (!Object.hasOwn(item, parts)) return item
  return changeAt(item, [parts], (written) => changeParts(written, (part) => changeItem(part, model, going, kind)))
}

function changeReference(item: PlainMap, steps: readonly string[], going: Going): PlainMap {
  if (valueAt(item, steps) === undefined) return item
  return changeAt(item, steps, (entry) => changedEntry(entry, going))
}

function changedEntry(entry: unknown, going: Going): unknown {
  const value = valueOf(entry)
  if (isList(value)) {
    const members = changedMembers(value, going)
    return members === value ? entry : withValue(entry, members)
  }
  const id = textOf(value)
  if (id === undefined || !going.goes(id)) return entry
  return going.leaves === 'unknown' ? 'unknown' : undefined
}

function changedMembers(members: readonly unknown[], { goes, leaves }: Going): readonly unknown[] {
  const kept = replaceEach(members, (member) => (goes(textOf(member) ?? '') ? [] : [member]))
  if (kept === members || leaves === 'nothing' || wordsIn(kept).includes('unknown')) return kept
  return [...kept, 'unknown']
}

function referenceNames(model: Model, kind: KindSpec): readonly string[] {
  return [...fieldsOf(model, kind)].filter(([, field]) => isReference(field)).map(([name]) => name)
}

function isReference(field: LeafField): boolean {
  return field.type === 'reference' || (field.type === 'list' && field.of.type === 'reference')
}
