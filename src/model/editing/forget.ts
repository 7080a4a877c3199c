import type { Model } from '../model.js'
import { textOf } from '../reading/index.js'
import { targetOf, type Target } from './address.js'
import { forgetZero } from './counts.js'
import type { FieldPlace } from './fields.js'
import { changeHolder, changePart, changeThing, type Holder } from './holder.js'
import { changeMentions, goingOf } from './mentions.js'
import { partsIn, withStatedCount } from './part-list.js'
import { changePaths } from './paths.js'
import { at, changeAt, mapAt, type PlainMap, withFilled, withoutKey } from './plain.js'
import { addressOf, itemAt, type ListSection, placesIn, type ThingPlace } from './sections.js'
import { done, refuse, type Refused, type Step } from './step.js'
import { forgetWork, workedThing } from './work.js'

/** Says less: the house stays as it is, and so do the counts. What is not said anyway may be forgotten too. */
export function forget(document: PlainMap, address: string, model: Model): Step {
  const found = targetOf(document, model, address)
  return found.ok ? forgetTarget(document, found.target, model) : found
}

function forgetTarget(document: PlainMap, target: Target, model: Model): Step {
  switch (target.type) {
    case 'key':
      if (target.key === 'installation') return refuseStructure('installation')
      return done(withoutKey(document, target.key))
    case 'section':
      return done(forgetSection(document, target.section, model))
    case 'kept':
      return done(withoutMember(document, 'kept', target.member))
    case 'count':
      return done(withoutMember(forgetZero(document, target.name), 'complete', target.name))
    case 'zero':
      return done(forgetZero(document, target.name))
    case 'thing':
      return done(forgetThings(document, [target.place], model))
    case 'part': {
      const without = changePart(document, target.place, () => undefined)
      return done(changeMentions(without, model, goingOf([`${target.place.owner.id}/${target.place.id}`], 'unknown')))
    }
    case 'field':
      return forgetField(document, target.holder, target.field, model)
    default: {
      const never: never = target
      return never
    }
  }
}

function forgetField(document: PlainMap, holder: Holder, field: FieldPlace, model: Model): Step {
  const worked = workedThing(holder, field)
  if (worked !== undefined) return done(forgetWork(document, worked))
  switch (field.type) {
    case 'value':
      return done(changeHolder(document, holder, (map) => changeAt(map, field.steps, () => undefined)))
    case 'parts':
      return done(forgetParts(document, holder, field.parts, model))
    case 'part-count':
      return done(
        changeHolder(document, holder, (map) =>
          changeAt(map, [field.parts], (parts) => withStatedCount(parts, undefined)),
        ),
      )
    case 'own':
      if (structure.includes(field.key)) return refuseStructure(field.key)
      return done(changeHolder(document, holder, (map) => withoutKey(map, field.key)))
    default: {
      const never: never = field
      return never
    }
  }
}

// forgetting a standing would make a guess a statement
const structure: readonly string[] = ['id', 'kind', 'path', 'medium', 'standing']

function refuseStructure(key: string): Refused {
  return refuse('not-forgettable', `"${key}" says what the thing is, not what is known of it.`, { received: key })
}

function forgetThings(document: PlainMap, places: readonly ThingPlace[], model: Model): PlainMap {
  const going = goingOf(places.map(addressOf), 'unknown')
  const without = places.reduce((sofar, place) => changeThing(sofar, place, () => undefined), document)
  return changeMentions(changePaths(without, going), model, going)
}

function forgetSection(document: PlainMap, section: ListSection, model: Model): PlainMap {
  const places = placesIn(document, section)
  const going = goingOf(places.map(addressOf), 'unknown')
  return changeMentions(changePaths(withoutKey(document, section), going), model, going)
}

function forgetParts(document: PlainMap, holder: Holder, parts: string, model: Model): PlainMap {
  const without = changeHolder(document, holder, (map) => withoutKey(map, parts))
  if (holder.type !== 'thing') return without
  const listed = partsIn(at(itemAt(document, holder.place) ?? {}, parts))
  const addresses = listed.map((part) => `${holder.place.id}/${textOf(at(part, 'id')) ?? ''}`)
  return changeMentions(without, model, goingOf(addresses, 'unknown'))
}

function withoutMember(document: PlainMap, key: string, member: string): PlainMap {
  return withFilled(document, key, withoutKey(mapAt(document, key), member))
}
