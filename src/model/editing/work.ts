import { textOf } from '../reading/index.js'
import type { FieldPlace } from './fields.js'
import { changeThing, type Holder } from './holder.js'
import { at, isList, listAt, mapAt, type PlainMap, replaceEach, withKey, withoutKey } from './plain.js'
import type { ThingPlace } from './sections.js'

/** The thing whose work a field says; the `kept` list of the document may say it too. */
export function workedThing(holder: Holder, field: FieldPlace): ThingPlace | undefined {
  const isWork = field.type === 'value' && field.steps.join('.') === 'work'
  if (!isWork || holder.type !== 'thing') return undefined
  return holder.place.section === 'components' || holder.place.section === 'lines' ? holder.place : undefined
}

/** Says the work of a thing itself; the list of kept things no longer does. */
export function setWork(document: PlainMap, place: ThingPlace, to: unknown): PlainMap {
  return changeThing(
    withoutKept(document, (id) => id === place.id),
    place,
    (item) => withKey(item, 'work', to),
  )
}

/** No longer says the work of a thing. Leaving it out would let `kept.others` answer, so it is written as unknown where that may be. */
export function forgetWork(document: PlainMap, place: ThingPlace): PlainMap {
  if (Object.hasOwn(document, 'kept')) return setWork(document, place, 'unknown')
  return changeThing(document, place, (item) => withoutKey(item, 'work'))
}

/** The document with some things out of the list of kept ones. */
export function withoutKept(document: PlainMap, goes: (id: string) => boolean): PlainMap {
  const kept = mapAt(document, 'kept')
  if (!isList(at(kept, 'list'))) return document
  const list = replaceEach(listAt(kept, 'list'), (id) => (goes(textOf(id) ?? '') ? [] : [id]))
  return withKey(document, 'kept', withKey(kept, 'list', list))
}
