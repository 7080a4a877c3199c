import { isMap, textOf } from '../reading/index.js'
import { isList, type PlainMap } from './plain.js'

/** The value of an entry, whether it is written short or long. */
export function valueOf(entry: unknown): unknown {
  return isLong(entry) ? entry['value'] : entry
}

/** The same entry with another value; the long form keeps what it says beside it. */
export function withValue(entry: unknown, value: unknown): unknown {
  return isLong(entry) ? { ...entry, value } : value
}

/** Whether there is anything in an entry to forget. `[unknown]` says as little as `unknown`. */
export function saysSomething(entry: unknown): boolean {
  const value = valueOf(entry)
  if (value === undefined || value === null || textOf(value) === 'unknown') return false
  return !isList(value) || value.length === 0 || value.some((member) => textOf(member) !== 'unknown')
}

function isLong(entry: unknown): entry is PlainMap {
  return isMap(entry) && Object.hasOwn(entry, 'value')
}
