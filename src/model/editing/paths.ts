import { isMap, textOf } from '../reading/index.js'
import { at, isList, listAt, type PlainMap, replaceEach, withKey } from './plain.js'
import type { Going } from './references.js'
import { idsOf, itemsIn, type ThingPlace } from './sections.js'

/** The component that a path item passes or ends at. */
export function componentOf(item: unknown): string | undefined {
  return textOf(item)?.split('.', 1)[0]
}

/** Puts `unknown` in the place of things that go, ends included; or, where the house changes, joins their neighbors. */
export function changePaths(document: PlainMap, { goes, leaves }: Going): PlainMap {
  if (!isList(at(document, 'lines'))) return document
  const left = leaves === 'unknown' ? ['unknown'] : []
  const change = (item: unknown): readonly unknown[] => (goes(componentOf(item) ?? '') ? left : [item])
  const lines = replaceEach(listAt(document, 'lines'), (line) => {
    if (!isMap(line) || !isList(at(line, 'path'))) return [line]
    return [withKey(line, 'path', replaceEach(listAt(line, 'path'), change))]
  })
  return withKey(document, 'lines', lines)
}

/** Lines that begin or end at a component. */
export function linesEndingAt(document: PlainMap, component: string): readonly ThingPlace[] {
  return itemsIn(document, 'lines')
    .filter((line) => endsOf(line).includes(component))
    .flatMap((line) => idsOf('lines', line).map((id) => ({ section: 'lines' as const, id })))
}

function endsOf(line: PlainMap): readonly (string | undefined)[] {
  const path = listAt(line, 'path')
  return [componentOf(path.at(0)), componentOf(path.at(-1))]
}
