import type { Model } from '../model.js'
import { targetOf, type Target } from './address.js'
import { setCount } from './counts.js'
import type { SetEdit } from './edit.js'
import type { FieldPlace } from './fields.js'
import { changeHolder, type Holder } from './holder.js'
import { withStatedCount } from './part-list.js'
import { at, changeAt, mapAt, type PlainMap, withKey } from './plain.js'
import { done, refuse, type Step } from './step.js'
import { setWork, workedThing } from './work.js'

/** Says a value, in place of what was said before. */
export function setValue(document: PlainMap, { set, to }: SetEdit, model: Model): Step {
  if (to === undefined || to === null) {
    return refuse('empty-value', `There is no value to set ${set} to.`, { nearest: 'unknown' })
  }
  const found = targetOf(document, model, set)
  return found.ok ? setTarget(document, found.target, set, to) : found
}

function setTarget(document: PlainMap, target: Target, address: string, to: unknown): Step {
  switch (target.type) {
    case 'key':
      if (target.key === 'installation')
        return refuse('not-settable', 'The version of the document is not for editing.')
      return done(withKey(document, target.key, to))
    case 'kept':
      return done(withKey(document, 'kept', { ...mapAt(document, 'kept'), [target.member]: to }))
    case 'count':
      return done(setCount(document, target.name, to))
    case 'zero':
      return refuse('not-settable', 'A kind is in "none" or not.', {
        received: address,
        nearest: `complete.${target.name}`,
      })
    case 'section':
      return refuse('not-settable', `"${address}" lists things: insert, remove or forget them one by one.`, {
        received: address,
      })
    case 'thing':
    case 'part':
      return refuse('not-settable', `${address} is a thing: say which of its fields to set.`, { received: address })
    case 'field':
      if (isIdentity(target.field))
        return refuse('not-settable', 'Id and kind stay: remove the thing and insert another.')
      return done(setFieldOf(document, target.holder, target.field, to))
    default: {
      const never: never = target
      return never
    }
  }
}

function setFieldOf(document: PlainMap, holder: Holder, field: FieldPlace, to: unknown): PlainMap {
  const worked = workedThing(holder, field)
  if (worked !== undefined) return setWork(document, worked, to)
  return changeHolder(document, holder, (map) => setField(map, field, to))
}

function setField(map: PlainMap, field: FieldPlace, to: unknown): PlainMap {
  switch (field.type) {
    case 'value':
      return changeAt(map, field.steps, () => to)
    case 'parts':
      return withKey(map, field.parts, to)
    case 'part-count':
      return withKey(map, field.parts, withStatedCount(at(map, field.parts), to))
    case 'own':
      return withKey(map, field.key, to)
    default: {
      const never: never = field
      return never
    }
  }
}

function isIdentity(field: FieldPlace): boolean {
  return field.type === 'own' && (field.key === 'id' || field.key === 'kind')
}
