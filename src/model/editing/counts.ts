import { textOf } from '../reading/index.js'
import { at, isList, listAt, mapAt, type PlainMap, withFilled, withKey, wordsIn } from './plain.js'
import { valueOf, withValue } from './written-entry.js'

/** Moves the stated counts of some names up or down. What is not counted stays uncounted. */
export function moveCounts(document: PlainMap, names: readonly string[], by: number): PlainMap {
  return names.reduce((sofar, name) => moveCountOf(sofar, name, by), document)
}

/** A count moved up or down, never below zero; a count that is no number stays as it is. */
export function movedCount(written: unknown, by: number): unknown {
  const value = valueOf(written)
  const number = readCount(value)
  if (number === undefined) return written
  const moved = Math.max(0, number + by)
  return withValue(written, typeof value === 'number' ? moved : String(moved))
}

export function readCount(value: unknown): number | undefined {
  const text = textOf(value) ?? ''
  return /^\d{1,15}$/.test(text) ? Number(text) : undefined
}

export function setCount(document: PlainMap, name: string, count: unknown): PlainMap {
  return withKey(forgetZero(document, name), 'complete', { ...mapAt(document, 'complete'), [name]: count })
}

/** No longer says that there are none of a name. */
export function forgetZero(document: PlainMap, name: string): PlainMap {
  if (!isList(at(document, 'none')) || !isZero(document, name)) return document
  return withFilled(
    document,
    'none',
    listAt(document, 'none').filter((one) => textOf(one) !== name),
  )
}

function moveCountOf(document: PlainMap, name: string, by: number): PlainMap {
  if (by > 0 && isZero(document, name)) return setCount(document, name, String(by))
  const complete = mapAt(document, 'complete')
  if (!Object.hasOwn(complete, name)) return document
  return withKey(document, 'complete', withKey(complete, name, movedCount(at(complete, name), by)))
}

function isZero(document: PlainMap, name: string): boolean {
  return wordsIn(at(document, 'none')).includes(name)
}
