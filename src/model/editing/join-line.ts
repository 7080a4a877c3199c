import type { KindSpec } from '../kind.js'
import { textOf } from '../reading/index.js'
import type { InsertEdit } from './edit.js'
import { changeThing } from './holder.js'
import { componentOf } from './paths.js'
import { listAt, type PlainMap, withKey, wordsIn } from './plain.js'
import { itemAt, placesIn } from './sections.js'
import { done, refuse, type Refused, refuseName, type Step } from './step.js'

/** Puts a new component into the path of a line, between two items that are there already. */
export function joinLine(
  document: PlainMap,
  edit: InsertEdit,
  kind: KindSpec | undefined,
  ids: readonly string[],
): Step {
  const { in: id, after, before, as } = edit
  const besideLine = after ?? before ?? as
  if (id === undefined && besideLine === undefined) return done(document)
  if (id === undefined) return refuse('missing-line', 'Say the line in "in".', { received: besideLine ?? '' })
  const line = itemAt(document, { section: 'lines', id })
  if (line === undefined)
    return refuseName(
      'unknown-id',
      `No line is called "${id}".`,
      id,
      placesIn(document, 'lines').map((place) => place.id),
    )
  const text = pathText(edit, kind, ids)
  if (typeof text !== 'string') return text
  const position = positionIn(listAt(line, 'path'), edit)
  if (typeof position !== 'number') return position
  return done(
    changeThing(document, { section: 'lines', id }, (own) =>
      withKey(own, 'path', listAt(own, 'path').toSpliced(position, 0, text)),
    ),
  )
}

function pathText({ as }: InsertEdit, kind: KindSpec | undefined, ids: readonly string[]): string | Refused {
  const [id, ...others] = ids
  if (id === undefined || others.length > 0) return refuse('not-a-thing', 'One thing at a time joins a line.')
  if (kind === undefined || kind.section !== 'components')
    return refuse('not-a-component', 'Only a component joins a line.')
  if (as !== undefined)
    return componentOf(as) === id ? as : refuse('unknown-id', `"as" passes ${id}.`, { received: as, nearest: id })
  if (kind.through !== undefined) return id
  return refuse('no-through-way', `${kind.name} has no through-way: say "as: ${id}.PORT-PORT".`, {
    expected: Object.keys(kind.ports).join(', '),
  })
}

function positionIn(path: readonly unknown[], { after, before }: InsertEdit): number | Refused {
  const beside = after ?? before
  if (beside === undefined || (after !== undefined && before !== undefined))
    return refuse('missing-neighbor', 'Say one path item: either "after" or "before".')
  const found = indexOf(path, beside)
  if (found === undefined) {
    return refuseName(
      'unknown-id',
      `The path has no item "${beside}" that can be told from the others.`,
      beside,
      wordsIn(path),
    )
  }
  const position = after === undefined ? found : found + 1
  if (position > 0 && position < path.length) return position
  return refuse('end-of-line', 'An inserted thing goes between two items of a path, never to its end.', {
    received: beside,
  })
}

function indexOf(path: readonly unknown[], beside: string): number | undefined {
  const positions = [...path.keys()]
  const exact = positions.filter((index) => textOf(path[index]) === beside)
  const passing = positions.filter((index) => componentOf(path[index]) === beside)
  return [exact, passing].find((found) => found.length === 1)?.[0]
}
