import type { Entry } from '../entry.js'
import type { Contradiction } from '../installation.js'
import type { Model } from '../model.js'
import type { Thing } from '../thing.js'

const counted: readonly string[] = ['components', 'lines', 'zones', 'spaces', 'fixtures', 'readings', 'tests']

/** Whether a thing is one of those that `all` counts: not parts, states, evidence or singletons. */
export function countsInAll(thing: Thing): boolean {
  return counted.includes(thing.kind.section)
}

export function totalOf(things: ReadonlyMap<string, Thing>): number {
  return [...things.values()].filter(countsInAll).length
}

/** More listed than stated. Assumed things only fill gaps, so they contradict nothing. */
export function countContradictions(
  things: ReadonlyMap<string, Thing>,
  counts: ReadonlyMap<string, Entry>,
  model: Model,
): readonly Contradiction[] {
  const listed = [...things.values()].filter((thing) => thing.standing === 'stated')
  const ofNames = [...counts].flatMap(([name, entry]) =>
    tooMany(name, entry, listed.filter((thing) => isCountedAs(thing, name, model)).length),
  )
  const ofParts = listed.flatMap((owner) =>
    Object.entries(owner.parts).flatMap(([name, parts]) =>
      parts.stated === undefined
        ? []
        : tooMany(
            `${owner.id}.${name}`,
            parts.stated,
            parts.ids.filter((id) => things.get(id)?.standing === 'stated').length,
          ),
    ),
  )
  return [...ofNames, ...ofParts]
}

function isCountedAs(thing: Thing, name: string, model: Model): boolean {
  if (name === 'all') return countsInAll(thing)
  if (name === 'states') return thing.kind.section === 'states'
  return (model.kindsIn.get(name) ?? []).includes(thing.kind.name)
}

function tooMany(name: string, entry: Entry, listed: number): readonly Contradiction[] {
  const stated = entry.value.type === 'quantity' ? entry.value.high : Infinity
  if (listed <= stated) return []
  return [
    {
      code: 'more-listed',
      subject: name,
      fact: 'count',
      message: `${listed} listed of ${name}, ${entry.text} stated.`,
    },
  ]
}
