import type { KindSpec } from '../kind.js'
import type { Model } from '../model.js'
import { targetOf, type Target } from './address.js'
import { countParts, countThings } from './census.js'
import { movedCount } from './counts.js'
import { changePart, changeThing, type PartPlace } from './holder.js'
import { changeMentions, goingOf } from './mentions.js'
import { statedCount, withStatedCount } from './part-list.js'
import { changePaths, linesEndingAt } from './paths.js'
import { changeAt, type PlainMap } from './plain.js'
import { addressOf, itemAt, type ThingPlace } from './sections.js'
import { done, refuse, type Step } from './step.js'

/** Takes a thing out of the house. */
export function remove(document: PlainMap, address: string, model: Model): Step {
  const found = targetOf(document, model, address)
  return found.ok ? removeTarget(document, found.target, address, model) : found
}

function removeTarget(document: PlainMap, target: Target, address: string, model: Model): Step {
  switch (target.type) {
    case 'thing':
      return done(removeThing(document, target.place, model))
    case 'part':
      return done(removePart(document, target.place, target.kind, model))
    case 'key':
    case 'section':
    case 'kept':
    case 'count':
    case 'zero':
    case 'field':
      return refuse('not-removable', `"${address}" is no thing that can be taken out: forget it, or set it.`, {
        received: address,
      })
    default: {
      const never: never = target
      return never
    }
  }
}

function removeThing(document: PlainMap, place: ThingPlace, model: Model): PlainMap {
  const taken = place.section === 'components' ? linesEndingAt(document, place.id) : []
  const gone = [place, ...taken]
  const going = goingOf(gone.map(addressOf), 'nothing')
  const without = gone.reduce((sofar, one) => takeOut(sofar, one, model), document)
  return changeMentions(changePaths(without, going), model, going)
}

function takeOut(document: PlainMap, place: ThingPlace, model: Model): PlainMap {
  const item = itemAt(document, place)
  if (item === undefined) return document
  return countThings(
    changeThing(document, place, () => undefined),
    model,
    place.section,
    item,
    -1,
  )
}

function removePart(document: PlainMap, place: PartPlace, kind: KindSpec, model: Model): PlainMap {
  const without = changePart(document, place, () => undefined)
  const counted = changeThing(without, place.owner, (owner) => changeAt(owner, [place.parts], oneFewer))
  return changeMentions(countParts(counted, kind, -1), model, goingOf([`${place.owner.id}/${place.id}`], 'nothing'))
}

function oneFewer(written: unknown): unknown {
  const stated = statedCount(written)
  return stated === undefined ? written : withStatedCount(written, movedCount(stated, -1))
}
