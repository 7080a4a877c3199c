import type { Entry } from '../entry.js'
import type { ApprovedModification } from '../installation.js'
import type { Model } from '../model.js'
import { phases, type Phase } from '../phase.js'
import { pointerOf } from '../problem.js'
import { nearestIn, type ProblemList, type Steps } from './problems.js'
import { oneOf, readEntry } from './read-entry.js'
import { describe, isMap, listAt, mapAt, textOf } from './shapes.js'

const countField = { type: 'quantity', quantity: 'count' } as const

/** Stated numbers of things: `complete`, with `none` as counts of zero. */
export function readCounts(
  raw: Readonly<Record<string, unknown>>,
  model: Model,
  problems: ProblemList,
): ReadonlyMap<string, Entry> {
  const names = ['all', 'states', ...model.kindsIn.keys()]
  const counts = new Map<string, Entry>()
  const complete = mapAt(raw.complete, ['complete'], problems) ?? {}
  for (const [name, value] of Object.entries(complete)) {
    const steps = ['complete', name]
    if (!names.includes(name))
      problems.add('unknown-kind', steps, `There is no kind or family "${name}" to count.`, nearestIn(name, names))
    const entry = readEntry(countField, value, { problems, steps, standing: 'stated' })
    if (entry !== undefined) counts.set(name, entry)
  }
  for (const [index, value] of listAt(raw.none, ['none'], problems).entries())
    readNone(value, { steps: ['none', index], names, counts, problems })
  return counts
}

function readNone(
  value: unknown,
  place: { steps: Steps; names: readonly string[]; counts: Map<string, Entry>; problems: ProblemList },
): undefined {
  const { steps, names, counts, problems } = place
  const name = textOf(value) ?? ''
  if (!names.includes(name))
    return problems.add('unknown-kind', steps, `There is no kind or family "${name}".`, nearestIn(name, names))
  if (counts.has(name)) return problems.add('counted-twice', steps, `"${name}" is counted under "complete" already.`)
  const value_ = { type: 'quantity', quantity: 'count', low: 0, high: 0 } as const
  counts.set(name, { value: value_, text: 'none', standing: 'stated', evidence: [], pointer: pointerOf(steps) })
}

export function readPhase(raw: unknown, problems: ProblemList): Phase | undefined {
  return raw === undefined || textOf(raw) === 'unknown' ? undefined : oneOf(phases, raw, ['phase'], problems)
}

export interface Kept {
  readonly list: ReadonlySet<string>
  readonly others?: Entry
  readonly pointer: string
}

/** The list of kept things. Only with a list does `others` say anything. */
export function readKept(raw: unknown, problems: ProblemList): Kept | undefined {
  const map = mapAt(raw, ['kept'], problems)
  if (map === undefined) return undefined
  for (const key of Object.keys(map))
    if (key !== 'list' && key !== 'others')
      problems.add('unknown-key', ['kept', key], `"kept" has no "${key}".`, nearestIn(key, ['list', 'others']))
  const items = listAt(map.list, ['kept', 'list'], problems).flatMap((id) => textOf(id) ?? [])
  const complete = map.list !== undefined && !items.includes('unknown')
  const field = { type: 'choice', choices: { new: 'new', kept: 'kept' } } as const
  const others = complete
    ? readEntry(field, map.others, { problems, steps: ['kept', 'others'], standing: 'stated' })
    : undefined
  return {
    list: new Set(items.filter((id) => id !== 'unknown')),
    ...(others === undefined ? {} : { others }),
    pointer: '/kept/list',
  }
}

const approvedKeys = ['rule', 'subject', 'accepts', 'by', 'evidence', 'expires'] as const

/** Approved modifications. Each names the rule, the thing, what exactly is accepted, by whom, and the letter. */
export function readApproved(raw: unknown, problems: ProblemList): readonly ApprovedModification[] {
  return listAt(raw, ['approved'], problems).flatMap(
    (item, index) => readOneApproved(item, ['approved', index], problems) ?? [],
  )
}

function readOneApproved(raw: unknown, steps: Steps, problems: ProblemList): ApprovedModification | undefined {
  if (!isMap(raw))
    return problems.add('not-a-map', steps, 'An approved modification is written as names with values.', {
      received: describe(raw),
    })
  for (const key of Object.keys(raw))
    if (!approvedKeys.some((known) => known === key))
      problems.add(
        'unknown-key',
        [...steps, key],
        `An approved modification has no "${key}".`,
        nearestIn(key, approvedKeys),
      )
  const [rule, subject, by] = [textOf(raw.rule), textOf(raw.subject), textOf(raw.by)]
  const evidence = listAt(raw.evidence, [...steps, 'evidence'], problems).flatMap((id) => textOf(id) ?? [])
  const accepts = readAccepts(raw.accepts, [...steps, 'accepts'], problems)
  if (
    rule === undefined ||
    subject === undefined ||
    by === undefined ||
    evidence.length === 0 ||
    Object.keys(accepts).length === 0
  ) {
    return problems.add(
      'incomplete-approval',
      steps,
      'An approved modification names rule, subject, accepts, by and evidence.',
    )
  }
  const expires = readEntry({ type: 'quantity', quantity: 'date' }, raw.expires, {
    problems,
    steps: [...steps, 'expires'],
    standing: 'stated',
  })
  return {
    rule,
    subject,
    accepts,
    by,
    evidence,
    pointer: pointerOf(steps),
    ...(expires === undefined ? {} : { expires }),
  }
}

function readAccepts(raw: unknown, steps: Steps, problems: ProblemList): ApprovedModification['accepts'] {
  const map = mapAt(raw, steps, problems) ?? {}
  return Object.fromEntries(
    Object.entries(map).map(([fact, limit]) => {
      const operators = mapAt(limit, [...steps, fact], problems) ?? {}
      return [
        fact,
        Object.fromEntries(Object.entries(operators).map(([operator, value]) => [operator, textOf(value) ?? ''])),
      ]
    }),
  )
}
