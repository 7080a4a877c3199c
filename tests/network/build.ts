import type { Entry, EntryValue, Installation, KindSpec, Medium, PathItem, Thing } from '../../src/model/index.js'
import { byKind } from '../../src/model/index.js'
import { openNetwork, type Network } from '../../src/network/index.js'
import { testLine, testModel } from './kinds.js'

/** A component as a test writes it: id, kind, and values by field. */
export interface Part {
  readonly id: string
  readonly kind: string
  readonly capped?: readonly string[]
  readonly values?: Readonly<Record<string, string | number>>
}

/** A line as a test writes it. `CV1.out-in` runs through backwards, a bare id forwards. */
export interface Run {
  readonly id: string
  readonly path: readonly string[]
  readonly medium?: Medium
  readonly values?: Readonly<Record<string, string>>
}

/** A whole house as a test writes it. */
export interface House {
  readonly parts: readonly Part[]
  readonly runs: readonly Run[]
  readonly counts?: Readonly<Record<string, number>>
}

export const part = (id: string, kind: string, more: Omit<Part, 'id' | 'kind'> = {}): Part => ({ id, kind, ...more })
export const run = (id: string, path: string, more: Omit<Run, 'id' | 'path'> = {}): Run => ({
  id,
  path: path.split(' '),
  ...more,
})

export function networkOf(house: House): Network {
  return openNetwork(installationOf(house))
}

export function installationOf({ parts, runs, counts = {} }: House): Installation {
  const kinds = new Map(parts.map(({ id, kind }) => [id, kind]))
  const components = parts.map((each) => thing(each.id, kindNamed(each.kind), entriesOf(each)))
  const lines = runs.map(({ id, path, medium = 'heatingWater', values = {} }) => ({
    ...thing(id, testLine, entriesOf({ values })),
    medium,
    path: path.map((item, index) => itemOf(item, { atEnd: index === 0 || index === path.length - 1, kinds })),
  }))
  const things = new Map<string, Thing>([...components, ...lines].map((each) => [each.id, each]))
  return {
    model: testModel,
    units: 'ip',
    things,
    ofKind: byKind(things),
    total: things.size,
    counts: new Map(Object.entries(counts).map(([name, count]) => [name, entry(valueOf(count))])),
    removed: [],
    approved: [],
    contradictions: [],
  }
}

function kindNamed(name: string): KindSpec {
  const found = testModel.kinds.get(name)
  if (found === undefined) throw new Error(`the test has no kind ${name}`)
  return found
}

function thing(id: string, kind: KindSpec, entries: Readonly<Record<string, Entry>>): Thing {
  return { id, kind, standing: 'stated', entries, parts: {}, evidence: [], pointer: `/${id}` }
}

function entriesOf({ capped, values = {} }: Pick<Part, 'capped' | 'values'>): Readonly<Record<string, Entry>> {
  const known = Object.entries(values).map(([field, value]) => [field, entry(valueOf(value))] as const)
  if (capped === undefined) return Object.fromEntries(known)
  const members = capped.filter((port) => port !== 'unknown')
  const list = entry({ type: 'list', members, complete: members.length === capped.length })
  return Object.fromEntries([...known, ['capped', list]])
}

function valueOf(value: string | number): EntryValue {
  if (typeof value === 'string') return { type: 'word', word: value }
  return { type: 'quantity', quantity: 'count', low: value, high: value }
}

function entry(value: EntryValue): Entry {
  return { value, text: '', standing: 'stated', evidence: [], pointer: '/' }
}

function itemOf(item: string, { atEnd, kinds }: { atEnd: boolean; kinds: ReadonlyMap<string, string> }): PathItem {
  if (item === 'unknown') return { type: 'unknown' }
  const [component = '', port = ''] = item.split('.')
  if (atEnd) return { type: 'port', component, port }
  const written = port === '' ? testModel.kinds.get(kinds.get(component) ?? '')?.through : port.split('-')
  const [enter = '', leave = ''] = written ?? ['in', 'out']
  return { type: 'through', component, enter, leave }
}
