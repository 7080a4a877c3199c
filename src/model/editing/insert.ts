import type { Model } from '../model.js'
import { isMap, textOf } from '../reading/index.js'
import { countParts, countThings } from './census.js'
import { movedCount } from './counts.js'
import type { InsertEdit } from './edit.js'
import { changeThing } from './holder.js'
import { insertionPlace, type InsertionPlace } from './insertion-place.js'
import { joinLine } from './join-line.js'
import { addPart, partsIn, statedCount, withStatedCount } from './part-list.js'
import { at, changeAt, listAt, type PlainMap, withKey } from './plain.js'
import { addressOf, idKey, idsOf, itemAt, type ListSection, listSections } from './sections.js'
import { done, refuse, type Step } from './step.js'

/** Adds a thing to the house. */
export function insert(document: PlainMap, edit: InsertEdit, model: Model): Step {
  const thing = edit.insert
  if (!isMap(thing)) return refuse('not-a-thing', 'What is inserted is one thing, with its id.')
  const found = insertionPlace(document, edit.section, thing, model)
  if (!found.ok) return found
  return insertAt(document, edit, thing, found.place, model)
}

function insertAt(document: PlainMap, edit: InsertEdit, thing: PlainMap, place: InsertionPlace, model: Model): Step {
  switch (place.type) {
    case 'parts':
      return insertPart(document, edit, thing, place)
    case 'section':
      return insertThing(document, edit, thing, place, model)
    default: {
      const never: never = place
      return never
    }
  }
}

function insertThing(
  document: PlainMap,
  edit: InsertEdit,
  thing: PlainMap,
  { section, kind }: InsertionPlace & { readonly type: 'section' },
  model: Model,
): Step {
  const ids = idsOf(section, thing)
  if (ids.length === 0) return refuse('missing-id', `What is inserted needs its "${idKey(section)}".`)
  const taken = takenId(document, section, ids)
  if (taken !== undefined) return refuse('duplicate-id', `The document has "${taken}" already.`, { received: taken })
  const joined = joinLine(document, edit, section === 'components' ? kind : undefined, ids)
  if (!joined.ok) return joined
  const listed = withKey(joined.document, section, [...listAt(document, section), thing])
  return done(countThings(listed, model, section, thing, ids.length))
}

function insertPart(
  document: PlainMap,
  edit: InsertEdit,
  part: PlainMap,
  place: InsertionPlace & { readonly type: 'parts' },
): Step {
  const { owner, parts, kind } = place
  const id = textOf(at(part, 'id'))
  if (id === undefined) return refuse('missing-id', 'What is inserted needs its "id".')
  if (edit.in !== undefined) return refuse('not-a-component', 'Only a component joins a line.')
  const siblings = Object.keys(itemAt(document, owner) ?? {})
  const taken = siblings.some((key) =>
    partsIn(at(itemAt(document, owner) ?? {}, key)).some((one) => textOf(at(one, 'id')) === id),
  )
  if (taken) return refuse('duplicate-id', `${addressOf(owner)} has a part "${id}" already.`, { received: id })
  const listed = changeThing(document, owner, (item) => changeAt(item, [parts], (written) => oneMore(written, part)))
  return done(countParts(listed, kind, 1))
}

function oneMore(written: unknown, part: PlainMap): unknown {
  const stated = statedCount(written)
  const listed = addPart(written, part)
  return stated === undefined ? listed : withStatedCount(listed, movedCount(stated, 1))
}

function takenId(document: PlainMap, section: ListSection, ids: readonly string[]): string | undefined {
  const rivals = section === 'states' ? [section] : listSections.filter((one) => one !== 'states')
  return ids.find((id) => rivals.some((rival) => itemAt(document, { section: rival, id }) !== undefined))
}
