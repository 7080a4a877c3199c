import type { KindSpec } from '../kind.js'
import type { Model } from '../model.js'
import { textOf } from '../reading/index.js'
import { targetOf } from './address.js'
import { at, isList, type PlainMap } from './plain.js'
import { isListSection, itemAt, kindOf, type ListSection, listSections, type ThingPlace } from './sections.js'
import { refuse, type Refused, refuseName } from './step.js'

/** Where a new thing is written: in a section, or in a list of parts of its owner. */
export type InsertionPlace =
  | { readonly type: 'section'; readonly section: ListSection; readonly kind: KindSpec | undefined }
  | { readonly type: 'parts'; readonly owner: ThingPlace; readonly parts: string; readonly kind: KindSpec }

export type FoundPlace = { readonly ok: true; readonly place: InsertionPlace } | Refused

/** Finds where a thing is written: where it is said to be, or where its kind is at home. */
export function insertionPlace(
  document: PlainMap,
  said: string | undefined,
  thing: PlainMap,
  model: Model,
): FoundPlace {
  if (said !== undefined && !isListSection(said)) return partsPlace(document, said, model)
  const section = said ?? sectionFor(thing, model)
  if (section === undefined)
    return refuse('missing-section', 'Say in which section the thing is written.', {
      expected: listSections.join(', '),
    })
  const named = textOf(at(thing, 'kind'))
  const kind = kindOf(model, section, thing)
  if (named !== undefined && kind === undefined)
    return refuseName('unknown-kind', `No kind is called "${named}".`, named, [...model.kinds.keys()])
  if (kind?.section === 'parts')
    return refuse(
      'missing-section',
      `${kind.name} is a part: say whose, such as "section: ${partsExample(model, kind)}".`,
    )
  if (kind !== undefined && section !== 'removed' && kind.section !== section) {
    return refuse('wrong-section', `${kind.name} is not written under "${section}".`, {
      received: section,
      nearest: kind.section,
    })
  }
  return { ok: true, place: { type: 'section', section, kind } }
}

function sectionFor(thing: PlainMap, model: Model): ListSection | undefined {
  const named = textOf(at(thing, 'kind'))
  if (named === undefined) return isList(at(thing, 'path')) ? 'lines' : undefined
  const section = model.kinds.get(named)?.section ?? 'components'
  return isListSection(section) ? section : 'components'
}

function partsPlace(document: PlainMap, said: string, model: Model): FoundPlace {
  const found = targetOf(document, model, said)
  if (!found.ok) return found
  const { target } = found
  if (target.type !== 'field' || target.holder.type !== 'thing' || target.field.type !== 'parts') {
    return refuse('wrong-section', `"${said}" lists no things.`, { received: said })
  }
  const { place: owner } = target.holder
  const { parts } = target.field
  const kind = kindOf(model, owner.section, itemAt(document, owner) ?? {})?.parts[parts]
  if (kind === undefined) return refuse('wrong-section', `"${said}" lists no things.`, { received: said })
  return { ok: true, place: { type: 'parts', owner, parts, kind } }
}

function partsExample(model: Model, part: KindSpec): string {
  const owner = model.ownerOf.get(part.name)
  return owner === undefined ? 'ID.parts' : `ID.${owner.parts}`
}
