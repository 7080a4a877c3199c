import type { LeafField, ReferenceField } from '../field.js'
import type { Entry } from '../entry.js'
import type { Medium } from '../kind.js'
import type { Model } from '../model.js'
import { mediaMeet, portsOf } from '../ports.js'
import type { PathItem, Thing } from '../thing.js'
import { nearestIn, type ProblemList } from './problems.js'

/** References that lead nowhere or to the wrong kind, and ports that are used twice or in the wrong medium. */
export function checkLinks(things: ReadonlyMap<string, Thing>, model: Model, problems: ProblemList): void {
  for (const thing of things.values()) checkReferences(thing, { things, model, problems })
  checkPorts(things, problems)
}

interface Links {
  readonly things: ReadonlyMap<string, Thing>
  readonly model: Model
  readonly problems: ProblemList
}

function checkReferences(thing: Thing, links: Links): void {
  for (const [name, entry] of Object.entries(thing.entries)) checkEntry(thing, name, entry, links)
}

function checkEntry(thing: Thing, name: string, entry: Entry, links: Links): void {
  const target = referenceOf(links.model.leaves.get(thing.kind.name)?.get(name))
  if (target !== undefined && entry.equipment === undefined)
    for (const id of idsIn(entry)) checkReference(id, target, entry, links)
  if (name === 'capped') for (const port of idsIn(entry)) checkCapped(thing, port, entry, links)
}

function referenceOf(field: LeafField | undefined): ReferenceField | undefined {
  if (field?.type === 'reference') return field
  return field?.type === 'list' && field.of.type === 'reference' ? field.of : undefined
}

function idsIn(entry: Entry): readonly string[] {
  if (entry.value.type === 'word') return [entry.value.word]
  return entry.value.type === 'list' ? entry.value.members : []
}

function checkReference(
  id: string,
  target: ReferenceField,
  entry: Entry,
  { things, model, problems }: Links,
): undefined {
  const kinds = target.to.flatMap((name) => model.kindsIn.get(name) ?? [])
  const found = things.get(id)
  if (found !== undefined && (kinds.length === 0 || kinds.includes(found.kind.name))) return undefined
  const steps = entry.pointer.split('/').slice(1)
  const fitting = [...things.values()].filter((thing) => kinds.includes(thing.kind.name)).map((thing) => thing.id)
  if (found === undefined) return problems.add('unknown-id', steps, `There is no "${id}".`, nearestIn(id, fitting))
  return problems.add(
    'wrong-kind',
    steps,
    `"${id}" is a ${found.kind.spoken}; this refers to ${target.to.join(' or ')}.`,
    nearestIn(id, fitting),
  )
}

function checkCapped(thing: Thing, port: string, entry: Entry, { problems }: Links): undefined {
  if (portsOf(thing.kind).has(port)) return undefined
  return problems.add(
    'unknown-port',
    entry.pointer.split('/').slice(1),
    `${thing.id} has no port "${port}".`,
    nearestIn(port, Object.keys(thing.kind.ports)),
  )
}

function checkPorts(things: ReadonlyMap<string, Thing>, problems: ProblemList): void {
  const taken = new Map<string, string>()
  for (const line of things.values()) {
    for (const [index, item] of (line.path ?? []).entries()) checkItem(item, { line, index, things, taken, problems })
  }
}

interface ItemPlace {
  readonly line: Thing
  readonly index: number
  readonly things: ReadonlyMap<string, Thing>
  readonly taken: Map<string, string>
  readonly problems: ProblemList
}

function checkItem(item: PathItem, { line, index, things, taken, problems }: ItemPlace): void {
  if (item.type === 'unknown') return
  const steps = [...line.pointer.split('/').slice(1), 'path', index]
  const component = things.get(item.component)
  for (const port of item.type === 'port' ? [item.port] : [item.enter, item.leave]) {
    const key = `${item.component}.${port}`
    const other = taken.get(key)
    if (other !== undefined)
      problems.add('port-taken', steps, `${key} is used by line ${other} already; branch with a tee or a header.`)
    taken.set(key, line.id)
    const medium = component === undefined ? undefined : portsOf(component.kind).mediumOf(port)
    if (medium === undefined || line.medium === undefined || mediaMeet(line.medium, medium)) continue
    const message = `${key} carries ${medium}; the line carries ${line.medium}.`
    problems.add('wrong-medium', steps, message, nearestFitting(item, port, { component, medium: line.medium }))
  }
}

interface Wanted {
  readonly component: Thing | undefined
  readonly medium: Medium
}

/** At the end of a line, the port of the same component that may carry what the line carries; the likest name of several. */
function nearestFitting(item: PathItem, port: string, { component, medium }: Wanted): { readonly nearest?: string } {
  if (component === undefined || item.type !== 'port') return {}
  const fitting = Object.entries(component.kind.ports).flatMap(([name, carried]) =>
    !name.endsWith('*') && mediaMeet(medium, carried) ? [name] : [],
  )
  const [only, ...others] = fitting
  return only !== undefined && others.length === 0 ? { nearest: `${component.id}.${only}` } : nearestIn(port, fitting)
}
