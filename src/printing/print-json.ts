import type { Report } from '../findings/index.js'

/**
 * Prints a report as JSON: two spaces, keys in one order whoever built the report, a line break at the end.
 *
 * @example
 * JSON.parse(printJson(report)).outcome
 */
export function printJson(report: Report): string {
  return `${JSON.stringify(ordered(report), null, 2)}\n`
}

// What a reader looks for first; the rest follows in the order of its letters.
const first: readonly string[] = [
  'outcome',
  'headline',
  'name',
  'key',
  'rule',
  'title',
  'verdict',
  'severity',
  'subject',
  'message',
]

function ordered(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(ordered)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(
    Object.entries(value)
      .sort(byKey)
      .map(([key, inner]) => [key, ordered(inner)]),
  )
}

function byKey([a]: readonly [string, unknown], [b]: readonly [string, unknown]): number {
  return rank(a) - rank(b) || (a < b ? -1 : 1)
}

function rank(key: string): number {
  const at = first.indexOf(key)
  return at === -1 ? first.length : at
}
