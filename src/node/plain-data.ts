import { isAlias, isMap, isSeq, type YAMLMap, type YAMLSeq } from 'yaml'
import { pointerOf } from '../model/index.js'
import { judgeKey, keyAlone } from './judge-key.js'
import { judgeText } from './judge-text.js'
import type { Spot } from './locate.js'
import type { Mistake, Position, Wrong } from './mistake.js'
import { endOf, startOf, textOf, wayOfWriting } from './node-text.js'
import { splitNumbers, type Piece } from './split-numbers.js'

/** What a text says: every leaf is text as written. */
export type PlainData = string | readonly PlainData[] | { readonly [key: string]: PlainData }

/** One walk through a text, with the mistakes it met. */
export interface Walk {
  readonly text: string
  readonly positionOf: (at: number) => Position
  readonly found: Mistake[]
}

interface Read {
  readonly data: PlainData
  readonly spot: Spot
}

/** Turns a tree of nodes into plain data and the spots where it stands. */
export function plainData(node: unknown, pointer: string, walk: Walk): Read {
  if (isMap(node)) return readMap(node, pointer, walk)
  if (isSeq(node)) return readList(node, pointer, walk)
  const wrong = isAlias(node) ? undefined : judgeText(node, walk.text)
  if (wrong !== undefined) walk.found.push({ ...wrong, at: startOf(node), pointer })
  return { data: textOf(node) ?? '', spot: { at: startOf(node) } }
}

function readList(list: YAMLSeq, pointer: string, walk: Walk): Read {
  const pieces = list.flow === true ? list.items.map((item) => pieceOf(item, true)) : []
  for (const split of splitNumbers(pieces, walk.text, 'list'))
    walk.found.push({ ...split.mistake, pointer: below(pointer, String(split.first)) })
  const items = list.items.map((item, index) => plainData(item, below(pointer, String(index)), walk))
  const inside = new Map(items.map((item, index) => [String(index), item.spot]))
  return { data: items.map((item) => item.data), spot: { at: startOf(list), inside } }
}

function readMap(map: YAMLMap, pointer: string, walk: Walk): Read {
  const told = cutNumbersIn(map, pointer, walk)
  const inside = new Map<string, Spot>()
  const entries: (readonly [string, PlainData])[] = []
  for (const [index, { key, value }] of map.items.entries()) {
    const name = textOf(key) ?? ''
    const keyAt = startOf(key)
    const alone = value === null ? keyAlone(name, map) : undefined
    const wrong = told.has(index)
      ? undefined
      : (judgeKey(key, map, walk.text) ?? alone ?? repeated(name, inside.get(name), walk))
    if (wrong !== undefined) walk.found.push({ ...wrong, at: keyAt, pointer: below(pointer, name) })
    if (value === null) continue
    const { data, spot } = plainData(value, below(pointer, name), walk)
    inside.set(name, { ...spot, keyAt })
    entries.push([name, data])
  }
  return { data: Object.fromEntries(entries), spot: { at: startOf(map), inside } }
}

function cutNumbersIn(map: YAMLMap, pointer: string, walk: Walk): ReadonlySet<number> {
  if (map.flow !== true) return new Set()
  const pieces = map.items.map(({ key, value }) => pieceOf(value ?? key, value === null))
  const splits = splitNumbers(pieces, walk.text, 'map')
  for (const split of splits)
    walk.found.push({ ...split.mistake, pointer: below(pointer, textOf(map.items[split.first]?.key) ?? '') })
  return new Set(splits.flatMap(({ first, last }) => [...map.items.keys()].slice(first + 1, last + 1)))
}

function pieceOf(node: unknown, alone: boolean): Piece | undefined {
  const text = textOf(node)
  return text === undefined || wayOfWriting(node) !== 'plain'
    ? undefined
    : { text, at: startOf(node), end: endOf(node), alone }
}

function repeated(name: string, first: Spot | undefined, walk: Walk): Wrong | undefined {
  if (first === undefined) return undefined
  const { line } = walk.positionOf(first.keyAt ?? first.at)
  return { code: 'duplicate-key', message: `"${name}" is written twice in one map, first in line ${line}.` }
}

function below(pointer: string, step: string): string {
  return `${pointer}${pointerOf([step])}`
}
