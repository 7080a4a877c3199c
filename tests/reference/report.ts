import type { CheckRecord } from './adapter.js'
import { type Checked, isPublished } from './check-records.js'

/** The result in lines: one a family, each record that is not within, and the count of published values at the end. */
export function reportLines(checked: readonly Checked[]): readonly string[] {
  const found = [...new Set(checked.map(({ record }) => familyOf(record)))]
  const published = checked.filter(({ record }) => isPublished(record))
  return [
    ...found.map((family) => familyLine(family, checked)),
    ...section('Do not apply:', checked, ['not-applicable']),
    ...section('Not within, for a known reason:', checked, ['contradicted']),
    ...section('MISSED:', checked, ['miss', 'unanswered', 'broken']),
    '',
    restLine(published),
    countLine(published, 'published values'),
  ]
}

/** Whether a record keeps the check from passing. */
export function isFailure({ outcome }: Checked): boolean {
  return outcome === 'miss' || outcome === 'unanswered' || outcome === 'broken'
}

function familyLine(family: string, checked: readonly Checked[]): string {
  const members = checked.filter(({ record }) => familyOf(record) === family)
  const published = members.filter(({ record }) => isPublished(record))
  const computed = members.filter(({ record }) => !isPublished(record))
  const parts = [
    ...(published.length > 0 ? [countLine(published, 'published values')] : []),
    ...(computed.length > 0 ? [countLine(computed, 'computed values')] : []),
  ]
  return `${family.padEnd(24)} ${parts.join(', ')}`
}

/** Every value counts: one that does not apply is not within, so that no reason can better the count. */
function countLine(some: readonly Checked[], what: string): string {
  const within = some.filter(({ outcome }) => outcome === 'within')
  return `${within.length} of ${some.length} ${what} within tolerance`
}

/** What became of the published values that are not within. */
function restLine(published: readonly Checked[]): string {
  const count = (outcome: Checked['outcome']): number => published.filter((one) => one.outcome === outcome).length
  const missed = published.filter(isFailure).length
  return `Of the others ${count('not-applicable')} do not apply, ${count('contradicted')} are not within for a known reason, ${missed} are missed.`
}

function section(
  title: string,
  checked: readonly Checked[],
  outcomes: readonly Checked['outcome'][],
): readonly string[] {
  const lines = checked.filter(({ outcome }) => outcomes.includes(outcome)).map(recordLine)
  return lines.length === 0 ? [] : ['', title, ...lines]
}

function recordLine(checked: Checked): string {
  const { id, expected, unit, tolerance, tolerance_kind, source } = checked.record
  const found = 'value' in checked ? `${checked.value} ${unit}; ` : ''
  const why = 'why' in checked ? `${checked.why}; ` : ''
  return `  ${id}: ${found}${why}expected ${expected} ${unit} +- ${tolerance} ${tolerance_kind} (${source})`
}

function familyOf({ id }: CheckRecord): string {
  const beginning = id.slice(0, id.indexOf('-'))
  return families[beginning] ?? beginning
}

const families: Readonly<Record<string, string>> = {
  w: 'water',
  pg: 'propylene glycol',
  eg: 'ethylene glycol',
  mpg: 'propylene glycol, pure',
  meg: 'ethylene glycol, pure',
  h: 'heat transport',
  p: 'pipe',
  f: 'friction and fittings',
  n: 'network and pump',
  e: 'emitters',
  l: 'load',
  x: 'expansion',
  r: 'relief',
  c: 'combustion',
  v: 'vent',
  g: 'gas',
  d: 'hot water',
  el: 'electrical',
  cl: 'climate',
  u: 'units',
}
