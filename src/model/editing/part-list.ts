import { isMap } from '../reading/index.js'
import { isList, listAt, type PlainMap, replaceEach, withKey } from './plain.js'

/** Parts as written: a bare list, or a list beside the number there is said to be. */
export function partsIn(written: unknown): readonly PlainMap[] {
  return listOf(written).filter(isMap)
}

/** Changes each part, or takes it out of the list. What is no list of parts stays as it is. */
export function changeParts(written: unknown, change: (part: PlainMap) => PlainMap | undefined): unknown {
  const next = replaceEach(listOf(written), (part) => {
    if (!isMap(part)) return [part]
    const changed = change(part)
    return changed === undefined ? [] : [changed]
  })
  return next === listOf(written) ? written : withList(written, next)
}

export function addPart(written: unknown, part: PlainMap): unknown {
  return withList(written, [...listOf(written), part])
}

/** The number of parts as said; absent where the list says nothing about others. */
export function statedCount(written: unknown): unknown {
  return isMap(written) && Object.hasOwn(written, 'complete') ? written['complete'] : undefined
}

/** Says how many parts there are, or no longer says it. */
export function withStatedCount(written: unknown, count: unknown): unknown {
  if (count !== undefined) return isMap(written) ? withKey(written, 'complete', count) : counted(written, count)
  if (!isMap(written)) return isList(written) ? written : undefined
  return Object.hasOwn(written, 'list') ? written['list'] : undefined
}

function counted(written: unknown, complete: unknown): PlainMap {
  return isList(written) ? { complete, list: written } : { complete }
}

const nothing: readonly unknown[] = []

function listOf(written: unknown): readonly unknown[] {
  if (isList(written)) return written
  if (!isMap(written)) return nothing
  return Object.hasOwn(written, 'list') ? listAt(written, 'list') : nothing
}

function withList(written: unknown, list: readonly unknown[]): unknown {
  return isMap(written) ? withKey(written, 'list', list) : list
}
