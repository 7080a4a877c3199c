import type { Entry, Installation, Thing } from '../model/index.js'
import type { Listing } from './fact.js'

/** How many more things of a kind there may be than are listed: zero when a stated count is met. */
export function moreOf(installation: Installation, kind: string): number {
  const spec = installation.model.kinds.get(kind)
  if (spec === undefined || spec.section === 'singleton') return 0
  if (spec.section === 'parts') return morePartsOf(installation, kind)
  const limits = [kind, ...spec.families.map((family) => family.name)].flatMap((name) => leftOver(installation, name))
  const all = countable.includes(spec.section) ? leftOver(installation, 'all') : []
  const states = spec.section === 'states' ? leftOver(installation, 'states') : []
  return Math.min(Infinity, ...limits, ...all, ...states)
}

const countable: readonly string[] = ['components', 'lines', 'zones', 'spaces', 'fixtures', 'readings', 'tests']

function leftOver(installation: Installation, name: string): readonly number[] {
  const stated = installation.counts.get(name)
  return stated === undefined ? [] : [Math.max(0, highest(stated) - listedAs(installation, name))]
}

function listedAs(installation: Installation, name: string): number {
  if (name === 'all') return installation.total
  const kinds = name === 'states' ? ['state'] : (installation.model.kindsIn.get(name) ?? [])
  return kinds.reduce((sum, kind) => sum + (installation.ofKind.get(kind)?.length ?? 0), 0)
}

function morePartsOf(installation: Installation, kind: string): number {
  const owner = installation.model.ownerOf.get(kind)
  if (owner === undefined) return Infinity
  const owners = installation.ofKind.get(owner.kind) ?? []
  const open = moreOf(installation, owner.kind) > 0 ? Infinity : 0
  return owners.reduce((sum, thing) => sum + moreParts(thing, owner.parts), open)
}

/** How many more parts an owner may have than are listed under a name. */
export function moreParts(owner: Thing, name: string): number {
  const list = owner.parts[name]
  return list?.stated === undefined ? Infinity : Math.max(0, highest(list.stated) - list.ids.length)
}

function highest(entry: Entry): number {
  return entry.value.type === 'quantity' ? entry.value.high : Infinity
}

/** Everything listed of a kind or family, with how many more there may be. */
export function listingOf(installation: Installation, name: string): Listing {
  const kinds = installation.model.kindsIn.get(name) ?? []
  const things = kinds.flatMap((kind) => installation.ofKind.get(kind) ?? [])
  const more =
    kinds.length === 0 ? Infinity : kinds.map((kind) => moreOf(installation, kind)).reduce((sum, one) => sum + one, 0)
  return { things, more: Math.min(more, ...leftOver(installation, name)) }
}

/** Parts of one owner under a name. */
export function partsOf(installation: Installation, owner: Thing, name: string): Listing {
  const ids = owner.parts[name]?.ids ?? []
  return { things: ids.flatMap((id) => installation.things.get(id) ?? []), more: moreParts(owner, name) }
}
