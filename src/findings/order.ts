import { places } from '../model/index.js'
import { severities } from '../rulebook/index.js'
import type { Finding } from './report.js'

/** Severity, then the walk round the house, then the thing, then the rule: a total order without locale. */
export function inOrder(findings: readonly Finding[]): readonly Finding[] {
  return [...findings].sort(compareFindings)
}

function compareFindings(a: Finding, b: Finding): number {
  return (
    severities.indexOf(a.severity) - severities.indexOf(b.severity) ||
    verdictRank(a) - verdictRank(b) ||
    places.indexOf(a.subject.place) - places.indexOf(b.subject.place) ||
    byText(a.subject.id, b.subject.id) ||
    byText(a.key, b.key)
  )
}

function verdictRank({ verdict }: Finding): number {
  return verdict === 'fail' ? 0 : 1
}

function byText(a: string, b: string): number {
  return a === b ? 0 : a < b ? -1 : 1
}
