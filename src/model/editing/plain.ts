import { isMap, textOf } from '../reading/index.js'

/** A map of plain data, as YAML or JSON gives it. */
export type PlainMap = Readonly<Record<string, unknown>>

export function isList(value: unknown): value is readonly unknown[] {
  return Array.isArray(value)
}

/** The words of a list; members that are none are left out. */
export function wordsIn(list: unknown): readonly string[] {
  return isList(list) ? list.flatMap((member) => textOf(member) ?? []) : []
}

/** The value under a key of the map itself; inherited names such as `constructor` are not keys. */
export function at(map: PlainMap, key: string): unknown {
  return Object.hasOwn(map, key) ? map[key] : undefined
}

export function mapAt(map: PlainMap, key: string): PlainMap {
  const value = at(map, key)
  return isMap(value) ? value : {}
}

export function listAt(map: PlainMap, key: string): readonly unknown[] {
  const value = at(map, key)
  return isList(value) ? value : []
}

export function withKey(map: PlainMap, key: string, value: unknown): PlainMap {
  return at(map, key) === value ? map : { ...map, [key]: value }
}

export function withoutKey(map: PlainMap, key: string): PlainMap {
  if (!Object.hasOwn(map, key)) return map
  return Object.fromEntries(Object.entries(map).filter(([name]) => name !== key))
}

/** The map with the key, or without it where nothing is left under it. */
export function withFilled(map: PlainMap, key: string, value: PlainMap | readonly unknown[]): PlainMap {
  return Object.keys(value).length === 0 ? withoutKey(map, key) : withKey(map, key, value)
}

export function valueAt(map: PlainMap, steps: readonly string[]): unknown {
  const [head, ...rest] = steps
  if (head === undefined) return undefined
  return rest.length === 0 ? at(map, head) : valueAt(mapAt(map, head), rest)
}

/** Changes the value at the end of some steps. `undefined` takes the key away, and with it a map that it leaves empty. */
export function changeAt(map: PlainMap, steps: readonly string[], change: (value: unknown) => unknown): PlainMap {
  const [head, ...rest] = steps
  if (head === undefined) return map
  if (rest.length > 0) return withFilled(map, head, changeAt(mapAt(map, head), rest, change))
  const value = change(at(map, head))
  return value === undefined ? withoutKey(map, head) : withKey(map, head, value)
}

/** Puts zero or more items in the place of each; the list itself comes back where nothing changed. */
export function replaceEach(
  list: readonly unknown[],
  change: (item: unknown) => readonly unknown[],
): readonly unknown[] {
  const next = list.flatMap(change)
  return next.length === list.length && next.every((item, index) => item === list[index]) ? list : next
}
