import { isMap, textOf, type Model, type PlainMap } from '../../src/model/index.js'

/** One line as written, with its path as text. */
export interface LineDrawn {
  readonly line: PlainMap
  readonly id: string
  readonly path: readonly string[]
}

/** What the paths of a document are redrawn with: its model, and the kind of each thing. */
interface Drawing {
  readonly model: Model
  readonly kinds: ReadonlyMap<string, string>
}

export function linesOf(document: PlainMap): readonly LineDrawn[] {
  return listIn(document, 'lines').flatMap((line) => {
    const path = Array.isArray(line.path) ? line.path.map(String) : []
    return path.length < 2 ? [] : [{ line, id: textOf(line.id) ?? '', path }]
  })
}

/** Every line listed from its other end: the same pipe, the same ways through. */
export function drawnBackwards(document: PlainMap, model: Model): PlainMap {
  const drawing = { model, kinds: kindsIn(document) }
  const lines = linesOf(document).map(({ line, path }) => ({
    ...line,
    path: path.toReversed().map((item, at) => turned(item, at === 0 || at === path.length - 1, drawing)),
  }))
  return { ...document, lines }
}

/**
 * Each line told as two that meet in a component on its way; `pick` says in which. The length is spread evenly over
 * what lies between neighbors. Lines that run straight from end to end stay.
 */
export function drawnInPieces(document: PlainMap, model: Model, pick: number): PlainMap {
  const drawing = { model, kinds: kindsIn(document) }
  const lines = linesOf(document).flatMap((drawn) => inPieces(drawn, pick, drawing))
  const complete = isMap(document.complete) ? document.complete : {}
  const all = Number(complete.all)
  const more = lines.length - linesOf(document).length
  const counted = Number.isFinite(all) ? { ...complete, all: String(all + more) } : complete
  return { ...document, lines, ...(isMap(document.complete) ? { complete: counted } : {}) }
}

function inPieces({ line, id, path }: LineDrawn, pick: number, drawing: Drawing): readonly PlainMap[] {
  const inner = [...path.keys()].slice(1, -1).filter((at) => path[at] !== 'unknown')
  const at = inner[pick % Math.max(1, inner.length)]
  const item = at === undefined ? undefined : path[at]
  if (at === undefined || item === undefined) return [line]
  const [component, enter, leave] = wayOf(item, drawing)
  const share = at / (path.length - 1)
  return [
    { ...withShare(line, share), path: [...path.slice(0, at), `${component}.${enter}`] },
    { ...withShare(line, 1 - share), id: `${id}-2`, path: [`${component}.${leave}`, ...path.slice(at + 1)] },
  ]
}

/** A line with its part of the length of pipe. */
function withShare(line: PlainMap, share: number): PlainMap {
  if (!isMap(line.pipe)) return line
  const pipe = Object.entries(line.pipe).map(([name, value]) => [name, shareOf(value, share)])
  return { ...line, pipe: Object.fromEntries(pipe) }
}

function shareOf(value: unknown, share: number): unknown {
  const [, feet] = /^([\d.]+) ft$/.exec(textOf(value) ?? '') ?? []
  return feet === undefined ? value : `${Number(feet) * share} ft`
}

function turned(item: string, atEnd: boolean, drawing: Drawing): string {
  if (atEnd || item === 'unknown') return item
  const [component, enter, leave] = wayOf(item, drawing)
  return `${component}.${leave}-${enter}`
}

function wayOf(item: string, { model, kinds }: Drawing): readonly [string, string, string] {
  const [component = '', port] = item.split('.')
  const [enter = '', leave = ''] = port?.split('-') ?? model.kinds.get(kinds.get(component) ?? '')?.through ?? []
  return [component, enter, leave]
}

function kindsIn(document: PlainMap): ReadonlyMap<string, string> {
  return new Map(
    listIn(document, 'components').flatMap(({ id, kind }) =>
      [id].flat().map((one): [string, string] => [String(one), textOf(kind) ?? '']),
    ),
  )
}

function listIn(document: PlainMap, section: string): readonly PlainMap[] {
  const list = document[section]
  return Array.isArray(list) ? list.filter(isMap) : []
}
