import type { KindSpec } from '../kind.js'
import { thingSections } from '../list-sections.js'
import type { Model } from '../model.js'
import { isMap, textOf } from '../reading/index.js'
import { at, isList, listAt, type PlainMap, wordsIn } from './plain.js'

/** Sections of the document that list things, those that are gone included. */
export const listSections = [...thingSections, 'removed'] as const
export type ListSection = (typeof listSections)[number]

/** A thing by the section it is written in and its id; states go by their name. */
export interface ThingPlace {
  readonly section: ListSection
  readonly id: string
}

const outsideAll: readonly ListSection[] = ['states', 'evidence', 'removed']

export function isListSection(word: string): word is ListSection {
  return listSections.some((section) => section === word)
}

export function itemsIn(document: PlainMap, section: ListSection): readonly PlainMap[] {
  return listAt(document, section).filter(isMap)
}

/** Ids of an item: several where alike things are written once. */
export function idsOf(section: ListSection, item: PlainMap): readonly string[] {
  const id = at(item, idKey(section))
  return wordsIn(isList(id) ? id : [id])
}

export function idKey(section: ListSection): 'id' | 'name' {
  return section === 'states' ? 'name' : 'id'
}

export function addressOf({ section, id }: ThingPlace): string {
  return section === 'states' ? `state ${id}` : id
}

export function placesIn(document: PlainMap, section: ListSection): readonly ThingPlace[] {
  return itemsIn(document, section).flatMap((item) => idsOf(section, item).map((id) => ({ section, id })))
}

export function itemAt(document: PlainMap, { section, id }: ThingPlace): PlainMap | undefined {
  return itemsIn(document, section).find((item) => idsOf(section, item).includes(id))
}

/** The kind of an item: the one it names, or the only one of its section. */
export function kindOf(model: Model, section: ListSection, item: PlainMap): KindSpec | undefined {
  const named = textOf(at(item, 'kind'))
  if (named !== undefined) return model.kinds.get(named)
  return [...model.kinds.values()].find((kind) => kind.section === section)
}

/** Names under which `complete` may count an item. */
export function countNames(model: Model, section: ListSection, item: PlainMap): readonly string[] {
  if (section === 'removed') return []
  const kind = kindOf(model, section, item)
  const names = kind === undefined ? [] : [kind.name, ...kind.families.map((family) => family.name)]
  if (section === 'states') return [...names, 'states']
  return outsideAll.includes(section) ? names : [...names, 'all']
}
