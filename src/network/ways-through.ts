import type { Closing, Thing, Way } from '../model/index.js'
import { isCountedPort, type ComponentPort } from './component-ports.js'
import type { Passage } from './passage.js'
import type { Told } from './told.js'

/** A way through a component, between two of its ports. */
export interface WayThrough {
  readonly from: ComponentPort
  readonly to: ComponentPort
  readonly passage: Passage
}

/** The ways through a component. `branch*` in a way stands for every branch. */
export function waysThrough(thing: Thing, ports: readonly ComponentPort[]): readonly WayThrough[] {
  return thing.kind.ways.flatMap((way) => {
    const told = {
      owner: thing,
      closes: closes(thing, way.closes),
      checks: checks(thing, way),
      restricts: way.restricts === true,
    }
    return pairsOf(thing, way, ports).map(([from, to]) => ({
      from,
      to,
      passage: { ...told, crosses: from.group !== to.group },
    }))
  })
}

type Pair = readonly [ComponentPort, ComponentPort]

function pairsOf(thing: Thing, way: Way, ports: readonly ComponentPort[]): readonly Pair[] {
  const [one, other] = way.between
  const starts = matching(thing, one, ports)
  const ends = matching(thing, other, ports)
  if (one.endsWith('*') && other.endsWith('*')) return chained([...new Set([...starts, ...ends])])
  return starts.flatMap((from) => ends.map((to): Pair => [from, to]))
}

/** Joins many ports with few passages: each with the next, those of one medium in a row. */
function chained(ports: readonly ComponentPort[]): readonly Pair[] {
  const sorted = ports.toSorted((one, other) => (one.group < other.group ? -1 : Number(one.group > other.group)))
  return sorted.slice(1).flatMap((to, index) => {
    const from = sorted[index]
    return from === undefined ? [] : [[from, to] as const]
  })
}

function matching(thing: Thing, name: string, ports: readonly ComponentPort[]): readonly ComponentPort[] {
  if (!name.endsWith('*')) return ports.filter(({ port }) => port === name)
  const prefix = name.slice(0, -1)
  return ports.filter(({ port }) => port.startsWith(prefix) && isCountedPort(thing, port))
}

function closes(thing: Thing, closing: Closing): Told {
  if (closing === 'always') return true
  if (closing === 'never') return false
  return toldBy(thing, closing.unless, (word) => word !== closing.is)
}

function checks(thing: Thing, way: Way): Told {
  if (way.checks === true) return true
  if (!Object.hasOwn(thing.kind.fields, 'checkBuiltIn')) return false
  return toldBy(thing, 'checkBuiltIn', (word) => word === 'yes')
}

function toldBy(thing: Thing, field: string, judge: (word: string) => boolean): Told {
  const value = thing.entries[field]?.value
  return value?.type === 'word' ? judge(value.word) : { subject: thing.id, fact: field }
}
