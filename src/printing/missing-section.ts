import type { MissingFact } from '../findings/index.js'
import type { Item, Section } from './sheet.js'

const mostShown = 10

/** What to find out next: the first ten by rank, and how many more there are. */
export function missingSection(missing: readonly MissingFact[]): readonly Section[] {
  const groups = gatherAlike(missing.filter((one) => !isCount(one)))
  if (groups.length === 0) return []
  const rest = groups.slice(mostShown).flat().length
  const more = rest === 0 ? '' : ` ${rest} more: "ask" lists them all.`
  return [
    {
      heading: `FIND OUT NEXT (${groups.flat().length})`,
      tone: 'open',
      numbered: false,
      note: `Worst first, then what decides most.${more}`,
      items: groups.slice(0, mostShown).map(itemOf),
    },
  ]
}

/** How many there are of a kind is asked in a block of its own. */
export function isCount({ fact }: MissingFact): boolean {
  return fact === 'count' || fact.startsWith('count of ')
}

/** One fact of several things that decides the same is one question. */
export function gatherAlike(missing: readonly MissingFact[]): readonly (readonly MissingFact[])[] {
  const groups = new Map<string, MissingFact[]>()
  for (const one of missing) {
    const key = `${one.worst} ${one.fact} ${one.rules.join()}`
    groups.set(key, [...(groups.get(key) ?? []), one])
  }
  return [...groups.values()]
}

function itemOf(alike: readonly MissingFact[]): Item {
  const [first] = alike
  if (first === undefined) return { rows: [] }
  const name =
    alike.length === 1
      ? `${first.subject}.${first.fact}`
      : `${first.fact} of ${alike.map((one) => one.subject).join(', ')}`
  const decides = Math.max(...alike.map((one) => one.decides))
  return {
    rows: [
      {
        label: first.worst,
        text: decides > 1 ? `${name} (decides ${decides} questions${alike.length > 1 ? ' each' : ''})` : name,
        tone: first.worst,
      },
    ],
  }
}
