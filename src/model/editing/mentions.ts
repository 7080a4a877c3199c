import type { Model } from '../model.js'
import { isMap, textOf } from '../reading/index.js'
import { isList, listAt, type PlainMap, replaceEach, withFilled, withKey } from './plain.js'
import { changeReferences, type Going } from './references.js'
import { withoutKept } from './work.js'

/** What things that go by these addresses, their parts included, leave behind. */
export function goingOf(addresses: readonly string[], leaves: Going['leaves']): Going {
  const gone = new Set(addresses)
  return { goes: (id) => gone.has(id) || gone.has(ownerIn(id)), leaves }
}

/** Rewrites all that is said elsewhere of things that go, paths apart: references, the list of kept things, evidence. */
export function changeMentions(document: PlainMap, model: Model, going: Going): PlainMap {
  const referred = changeReferences(document, model, going)
  const unproved = changeMembers(referred, (value, key) =>
    accepted.includes(key) ? value : withoutEvidence(value, going, deepest),
  )
  return withoutKept(unproved, going.goes)
}

// what an official accepted rests on the papers it names, listed or not
const accepted: readonly string[] = ['approved']

// section, thing, part list, part, group, entry: evidence is named nowhere further down
const deepest = 7

function withoutEvidence(value: unknown, going: Going, depth: number): unknown {
  if (depth === 0) return value
  if (isList(value)) return replaceEach(value, (member) => [withoutEvidence(member, going, depth - 1)])
  if (!isMap(value)) return value
  const inside = changeMembers(value, (member) => withoutEvidence(member, going, depth - 1))
  const named = listAt(inside, 'evidence')
  const left = replaceEach(named, (id) => (going.goes(textOf(id) ?? '') ? [] : [id]))
  return left === named ? inside : withFilled(inside, 'evidence', left)
}

function changeMembers(map: PlainMap, change: (value: unknown, key: string) => unknown): PlainMap {
  const own = Object.entries(map).filter(([key]) => !key.startsWith('x-'))
  return own.reduce((sofar, [key, value]) => withKey(sofar, key, change(value, key)), map)
}

function ownerIn(id: string): string {
  return id.split('/', 1)[0] ?? id
}
