import type { KindSpec } from '../kind.js'
import type { Model } from '../model.js'
import { moveCounts, readCount } from './counts.js'
import { partsIn, statedCount } from './part-list.js'
import { at, type PlainMap } from './plain.js'
import { countNames, kindOf, type ListSection } from './sections.js'
import { valueOf } from './written-entry.js'

/** Counts some alike things of a section in or, with a negative number, out: under every name that counts them, with their parts. */
export function countThings(
  document: PlainMap,
  model: Model,
  section: ListSection,
  item: PlainMap,
  number: number,
): PlainMap {
  const counted = moveCounts(document, countNames(model, section, item), number)
  const kind = kindOf(model, section, item)
  if (kind === undefined || section === 'removed') return counted
  return Object.entries(kind.parts).reduce(
    (sofar, [parts, part]) => countParts(sofar, part, number * partCount(at(item, parts))),
    counted,
  )
}

/** Counts parts of one kind in or out, apart from the count that their owner states. */
export function countParts(document: PlainMap, kind: KindSpec, number: number): PlainMap {
  return moveCounts(document, [kind.name, ...kind.families.map((family) => family.name)], number)
}

function partCount(written: unknown): number {
  return readCount(valueOf(statedCount(written))) ?? partsIn(written).length
}
