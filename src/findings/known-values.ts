import type { Entry, Installation, Thing } from '../model/index.js'
import type { Report } from './report.js'

/** How well the stated values are known. */
export function countKnown(installation: Installation): Report['known'] {
  const entries = [...installation.things.values()].flatMap((thing) =>
    Object.values(thing.entries).map((entry) => ({ entry, thing })),
  )
  const stated = entries.filter(({ entry }) => entry.standing === 'stated')
  const shown = stated.filter((one) => hasPhoto(one.entry, one.thing, installation))
  const gauged = stated.filter(
    (one) => !shown.includes(one) && (one.entry.how === 'gauge' || one.entry.how === 'measured'),
  )
  return {
    values: entries.length,
    photo: shown.length,
    gauge: gauged.length,
    typed: stated.length - shown.length - gauged.length,
    assumed: entries.filter(({ entry }) => entry.standing === 'assumed').length,
    template: entries.filter(({ entry }) => entry.standing === 'template').length,
  }
}

function hasPhoto(entry: Entry, thing: Thing, installation: Installation): boolean {
  return [...entry.evidence, ...thing.evidence].some((id) => {
    const type = installation.things.get(id)?.entries.type
    return type?.value.type === 'word' && type.value.word === 'photo'
  })
}
