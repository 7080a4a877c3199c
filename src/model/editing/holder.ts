import { isMap, textOf } from '../reading/index.js'
import { changeParts } from './part-list.js'
import { at, changeAt, isList, listAt, mapAt, type PlainMap, replaceEach, withFilled, withKey } from './plain.js'
import { idKey, idsOf, type ThingPlace } from './sections.js'

/** A part by its owner, the name of the owner's list, and its own id. */
export interface PartPlace {
  readonly owner: ThingPlace
  readonly parts: string
  readonly id: string
}

/** The map that holds a value: the document itself, a section that is one map, a thing or a part. */
export type Holder =
  | { readonly type: 'document' }
  | { readonly type: 'key'; readonly key: string }
  | { readonly type: 'thing'; readonly place: ThingPlace }
  | { readonly type: 'part'; readonly place: PartPlace }

type Change = (map: PlainMap) => PlainMap

/** Changes the values of a holder. A section that is left empty goes. */
export function changeHolder(document: PlainMap, holder: Holder, change: Change): PlainMap {
  switch (holder.type) {
    case 'document':
      return change(document)
    case 'key':
      return withFilled(document, holder.key, change(mapAt(document, holder.key)))
    case 'thing':
      return changeThing(document, holder.place, change)
    case 'part':
      return changePart(document, holder.place, change)
    default: {
      const never: never = holder
      return never
    }
  }
}

/** Changes one thing, or takes it out of its section. A thing written together with others alike is parted from them first. */
export function changeThing(
  document: PlainMap,
  place: ThingPlace,
  change: (item: PlainMap) => PlainMap | undefined,
): PlainMap {
  const items = replaceEach(listAt(document, place.section), (item) => {
    if (!isMap(item) || !idsOf(place.section, item).includes(place.id)) return [item]
    const [others, own] = parted(item, place)
    return [others, change(own)].filter((one) => one !== undefined)
  })
  return withKey(document, place.section, items)
}

export function changePart(
  document: PlainMap,
  { owner, parts, id }: PartPlace,
  change: (part: PlainMap) => PlainMap | undefined,
): PlainMap {
  const one = (part: PlainMap): PlainMap | undefined => (textOf(at(part, 'id')) === id ? change(part) : part)
  return changeThing(document, owner, (item) => changeAt(item, [parts], (written) => changeParts(written, one)))
}

function parted(item: PlainMap, { section, id }: ThingPlace): readonly [PlainMap | undefined, PlainMap] {
  const key = idKey(section)
  const written = at(item, key)
  const others = isList(written) ? written.filter((one) => textOf(one) !== id) : []
  if (others.length === 0) return [undefined, item]
  return [withKey(item, key, others), withKey(item, key, id)]
}
