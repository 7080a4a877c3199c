import type { KindSpec } from '../kind.js'
import type { Model } from '../model.js'
import { isMap, textOf } from '../reading/index.js'
import { fieldsOf, groupsOf, singletonsOf } from './fields.js'
import { partsIn, statedCount } from './part-list.js'
import { at, isList, mapAt, type PlainMap, valueAt, wordsIn } from './plain.js'
import { addressOf, idsOf, itemsIn, kindOf, type ListSection, listSections } from './sections.js'
import { shapeOf } from './shape.js'
import { saysSomething } from './written-entry.js'

/**
 * Every address at which a document says something that could be forgotten: sections, things, parts, values, groups and
 * counts. What a thing is (id, kind, path, medium, standing) and what was decided (phase, authorities, approved
 * modifications) is no information in this sense. A document without usable shape says nothing.
 *
 * @example
 * for (const address of forgettable(document, model)) applyEdits(document, [{ forget: address }], model)
 */
export function forgettable(document: unknown, model: Model): readonly string[] {
  const shape = shapeOf(document, model)
  if (!shape.ok) return []
  const things = listSections.flatMap((section) => inSection(shape.document, model, section))
  const singletons = singletonsOf(model).flatMap((kind) => inSingleton(shape.document, model, kind))
  return [...new Set([...things, ...singletons, ...inRoot(shape.document, model), ...inFrame(shape.document)])]
}

function inSection(document: PlainMap, model: Model, section: ListSection): readonly string[] {
  if (!isList(at(document, section))) return []
  return [section, ...itemsIn(document, section).flatMap((item) => inItem(item, model, section))]
}

function inItem(item: PlainMap, model: Model, section: ListSection): readonly string[] {
  const kind = kindOf(model, section, item)
  return idsOf(section, item).flatMap((id) => {
    const address = addressOf({ section, id })
    return kind === undefined ? [address] : [address, ...inThing(item, model, kind, address)]
  })
}

function inThing(item: PlainMap, model: Model, kind: KindSpec, address: string): readonly string[] {
  const values = [...valuesIn(item, model, kind), ...(saysSomething(at(item, 'evidence')) ? ['evidence'] : [])]
  const parts = Object.entries(kind.parts).flatMap(([name, part]) =>
    inParts(at(item, name), model, part, address, name),
  )
  return [...new Set(values.map((name) => `${address}.${name}`)), ...parts]
}

function inParts(written: unknown, model: Model, kind: KindSpec, owner: string, name: string): readonly string[] {
  if (!isList(written) && !isMap(written)) return []
  const count = saysSomething(statedCount(written)) ? [`${owner}.${name}.complete`] : []
  const parts = partsIn(written).flatMap((part) => inPart(part, model, kind, owner))
  return [`${owner}.${name}`, ...count, ...parts]
}

function inPart(part: PlainMap, model: Model, kind: KindSpec, owner: string): readonly string[] {
  const id = textOf(at(part, 'id'))
  if (id === undefined) return []
  return [`${owner}/${id}`, ...inThing(part, model, kind, `${owner}/${id}`)]
}

function valuesIn(item: PlainMap, model: Model, kind: KindSpec): readonly string[] {
  const said = [...fieldsOf(model, kind).keys()].filter((name) => saysSomething(valueAt(item, name.split('.'))))
  const groups = groupsOf(model, kind).filter((group) => said.some((name) => name.startsWith(`${group}.`)))
  return [...said, ...groups]
}

// naming the authorities is a decision, and forgetting the section would take it back
const decided: readonly string[] = ['jurisdiction', 'jurisdiction.authorities']

function inSingleton(document: PlainMap, model: Model, kind: KindSpec): readonly string[] {
  if (!isMap(at(document, kind.name))) return []
  const values = valuesIn(mapAt(document, kind.name), model, kind).map((name) => `${kind.name}.${name}`)
  return [kind.name, ...values].filter((address) => !decided.includes(address))
}

function inRoot(document: PlainMap, model: Model): readonly string[] {
  const kind = model.kinds.get('installation')
  return kind === undefined ? [] : valuesIn(document, model, kind)
}

function inFrame(document: PlainMap): readonly string[] {
  const complete = mapAt(document, 'complete')
  const counts = Object.keys(complete).filter((name) => saysSomething(complete[name]))
  const zeros = wordsIn(at(document, 'none'))
  const sections = ['complete', 'none', 'kept'].filter((key) => saysSomething(at(document, key)))
  const kept = ['list', 'others'].filter((key) => saysSomething(at(mapAt(document, 'kept'), key)))
  return [
    ...sections,
    ...counts.map((name) => `complete.${name}`),
    ...zeros.map((name) => `none.${name}`),
    ...kept.map((key) => `kept.${key}`),
  ]
}
