import type { KindSpec } from '../kind.js'
import type { Model } from '../model.js'
import { textOf } from '../reading/index.js'
import { fieldNames, fieldPlace, singletonsOf, type FieldPlace } from './fields.js'
import { frameKeys, isFrameKey, knownCounts } from './frame.js'
import type { Holder, PartPlace } from './holder.js'
import { partsIn } from './part-list.js'
import { at, type PlainMap } from './plain.js'
import {
  addressOf,
  isListSection,
  itemAt,
  kindOf,
  type ListSection,
  listSections,
  placesIn,
  type ThingPlace,
} from './sections.js'
import { refuse, type Refused, refuseName } from './step.js'

/** What an address names in one document. */
export type Target =
  | { readonly type: 'key'; readonly key: string }
  | { readonly type: 'section'; readonly section: ListSection }
  | { readonly type: 'kept'; readonly member: 'list' | 'others' }
  | { readonly type: 'count'; readonly name: string }
  | { readonly type: 'zero'; readonly name: string }
  | { readonly type: 'thing'; readonly place: ThingPlace }
  | { readonly type: 'part'; readonly place: PartPlace; readonly kind: KindSpec }
  | { readonly type: 'field'; readonly holder: Holder; readonly field: FieldPlace }

export type Found = { readonly ok: true; readonly target: Target } | Refused

/** Finds what an address names: `RV1.setPressure`, `VT1/window-east`, `state hot water.open`, `site.snowLine`, `complete.boiler`. */
export function targetOf(document: PlainMap, model: Model, address: string): Found {
  if (isListSection(address)) return found({ type: 'section', section: address })
  if (isFrameKey(address) || isSingleton(model, address)) return found({ type: 'key', key: address })
  const [head, tail] = cut(address, '.')
  if (tail !== undefined && (isFrameKey(head) || isSingleton(model, head))) return inSection(model, head, tail)
  return thingTarget(document, model, address) ?? rootTarget(model, address) ?? refuseAddress(document, model, address)
}

function inSection(model: Model, head: string, tail: string): Found {
  if (head === 'complete') return countTarget(model, 'count', tail)
  if (head === 'none') return countTarget(model, 'zero', tail)
  if (head === 'kept' && (tail === 'list' || tail === 'others')) return found({ type: 'kept', member: tail })
  if (head === 'kept') return refuseName('unknown-field', '"kept" has no such key.', tail, ['list', 'others'])
  const kind = model.kinds.get(head)
  if (kind === undefined)
    return refuse('unknown-field', `"${head}" has nothing inside it.`, { received: `${head}.${tail}` })
  const holder: Holder = head === 'installation' ? { type: 'document' } : { type: 'key', key: head }
  return fieldTarget(model, kind, holder, tail)
}

function countTarget(model: Model, type: 'count' | 'zero', name: string): Found {
  const known = knownCounts(model)
  if (known.includes(name)) return found({ type, name })
  return refuseName('unknown-count', `No kind or family is called "${name}".`, name, known)
}

function thingTarget(document: PlainMap, model: Model, address: string): Found | undefined {
  const place = placeIn(document, address)
  const item = place && itemAt(document, place)
  if (place === undefined || item === undefined) return undefined
  const rest = address.slice(addressOf(place).length)
  if (rest === '') return found({ type: 'thing', place })
  const kind = kindOf(model, place.section, item)
  if (kind === undefined) return refuseKind(model, item)
  if (rest.startsWith('.')) return fieldTarget(model, kind, { type: 'thing', place }, rest.slice(1))
  return partTarget(model, kind, place, item, rest.slice(1))
}

function partTarget(model: Model, owner: KindSpec, place: ThingPlace, item: PlainMap, rest: string): Found {
  const [id, name] = cut(rest, '.')
  const all = Object.entries(owner.parts).flatMap(([parts, kind]) =>
    partsIn(at(item, parts)).map((part) => ({ parts, kind, id: textOf(at(part, 'id')) ?? '' })),
  )
  const part = all.find((one) => one.id === id)
  if (part === undefined)
    return refuseName(
      'unknown-id',
      `${addressOf(place)} has no part "${id}".`,
      id,
      all.map((one) => one.id),
    )
  const partPlace = { owner: place, parts: part.parts, id }
  if (name === undefined) return found({ type: 'part', place: partPlace, kind: part.kind })
  return fieldTarget(model, part.kind, { type: 'part', place: partPlace }, name)
}

function fieldTarget(model: Model, kind: KindSpec, holder: Holder, name: string): Found {
  const field = fieldPlace(model, kind, name)
  if (field !== undefined) return found({ type: 'field', holder, field })
  return refuseName('unknown-field', `${kind.name} has no field "${name}".`, name, fieldNames(model, kind))
}

function rootTarget(model: Model, address: string): Found | undefined {
  const root = model.kinds.get('installation')
  const field = root && fieldPlace(model, root, address)
  if (field !== undefined) return found({ type: 'field', holder: { type: 'document' }, field })
  return address.startsWith('x-') ? found({ type: 'key', key: address }) : undefined
}

function placeIn(document: PlainMap, address: string): ThingPlace | undefined {
  const places = listSections.flatMap((section) => placesIn(document, section))
  const named = places.filter((place) => isUnder(address, addressOf(place)))
  return named.reduce<ThingPlace | undefined>((longest, place) => (longer(place, longest) ? place : longest), undefined)
}

function isUnder(address: string, thing: string): boolean {
  return address === thing || address.startsWith(`${thing}.`) || address.startsWith(`${thing}/`)
}

function longer(place: ThingPlace, than: ThingPlace | undefined): boolean {
  return than === undefined || addressOf(place).length > addressOf(than).length
}

function refuseAddress(document: PlainMap, model: Model, address: string): Refused {
  const things = listSections.flatMap((section) => placesIn(document, section)).map(addressOf)
  const sections = [...listSections, ...frameKeys, ...singletonsOf(model).map((kind) => kind.name)]
  const [id = address] = address.split(/[./]/, 1)
  return refuseName('unknown-id', `Nothing in the document is called "${id}".`, id, [...things, ...sections])
}

function refuseKind(model: Model, item: PlainMap): Refused {
  const kind = textOf(at(item, 'kind')) ?? ''
  return refuseName('unknown-kind', `No kind is called "${kind}".`, kind, [...model.kinds.keys()])
}

function isSingleton(model: Model, name: string): boolean {
  return name !== 'installation' && model.kinds.get(name)?.section === 'singleton'
}

function found(target: Target): Found {
  return { ok: true, target }
}

function cut(text: string, mark: string): readonly [string, string | undefined] {
  const position = text.indexOf(mark)
  return position < 0 ? [text, undefined] : [text.slice(0, position), text.slice(position + mark.length)]
}
