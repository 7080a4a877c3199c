import type { Adapter, CheckRecord } from './adapter.js'

/** What became of a record. */
export type Checked = { readonly record: CheckRecord } & (
  | { readonly outcome: 'within' | 'miss'; readonly value: number }
  /** Outside its tolerance because its source and the one that the library follows disagree. */
  | { readonly outcome: 'contradicted'; readonly value: number; readonly why: string }
  | { readonly outcome: 'not-applicable' | 'unanswered' | 'broken'; readonly why: string }
)

/** What a record is held against. */
export interface Answers {
  /** By beginnings of ids; the longest that fits answers. */
  readonly adapters: ReadonlyMap<string, Adapter>
  /** Reasons by id. */
  readonly contradictions: Readonly<Record<string, string>>
}

/** Checks a record: it is within, it misses, or it is told why neither. */
export function checkRecord(record: CheckRecord, { adapters, contradictions }: Answers): Checked {
  const adapter = adapterFor(record.id, adapters)
  if (adapter === undefined) return { record, outcome: 'unanswered', why: 'no topic answers for it' }
  const answer = answerOf(adapter, record)
  if (typeof answer !== 'number') return { record, ...answer }
  const contradicted = contradictions[record.id]
  const within = isWithin(record, answer)
  if (contradicted === undefined) return { record, outcome: within ? 'within' : 'miss', value: answer }
  return within
    ? { record, outcome: 'broken', why: 'it is listed as contradicted, but it is within its tolerance' }
    : { record, outcome: 'contradicted', value: answer, why: contradicted }
}

/** Whether somebody else than the equation under test vouches for the expected value. */
export function isPublished({ basis, independent }: CheckRecord): boolean {
  return independent || basis === 'READ' || basis === 'MEMORY'
}

/** Whether a number lies within the tolerance of a record. */
export function isWithin({ expected, tolerance, tolerance_kind }: CheckRecord, value: number): boolean {
  const allowed = tolerance_kind === 'abs' ? tolerance : tolerance * Math.abs(expected)
  return Math.abs(value - expected) <= allowed
}

function adapterFor(id: string, adapters: ReadonlyMap<string, Adapter>): Adapter | undefined {
  const keys = [...adapters.keys()].filter((key) => id.startsWith(key))
  const longest = keys.reduce((best, key) => (key.length > best.length ? key : best), '')
  return adapters.get(longest)
}

function answerOf(
  adapter: Adapter,
  record: CheckRecord,
): number | { readonly outcome: 'not-applicable' | 'broken'; readonly why: string } {
  try {
    const answer = adapter(record)
    return typeof answer === 'number' ? answer : { outcome: 'not-applicable', why: answer.notApplicable }
  } catch (thrown) {
    return { outcome: 'broken', why: thrown instanceof Error ? thrown.message : String(thrown) }
  }
}
