import { missingCount } from './one-more.js'
import { missingOf } from './missing-of.js'
import type { MissingFact } from './report.js'
import type { JudgedVerdict } from './tell-finding.js'
import { severities, worstOf, type Severity } from '../rulebook/index.js'
import type { Installation } from '../model/index.js'
import type { Missing } from '../facts/index.js'

/** What to find out next: worst first, then what settles most. */
export function rankMissing(verdicts: readonly JudgedVerdict[], installation: Installation): readonly MissingFact[] {
  const hanging = new Map<
    string,
    { readonly missing: Missing; readonly verdicts: { key: string; rule: string; severity: Severity }[] }
  >()
  for (const verdict of verdicts) {
    for (const { missing, severity } of openIn(verdict, installation)) {
      const key = `${missing.subject} ${missing.fact}`
      const entry = hanging.get(key) ?? { missing, verdicts: [] }
      entry.verdicts.push({ key: `${verdict.rule.id}/${verdict.subject.id}`, rule: verdict.rule.id, severity })
      hanging.set(key, entry)
    }
  }
  return [...hanging.values()].map(toFact).sort(compareFacts)
}

function openIn(
  verdict: JudgedVerdict,
  installation: Installation,
): readonly { readonly missing: Missing; readonly severity: Severity }[] {
  const open = verdict.demands.filter((one) => one.verdict === 'undecided')
  if (verdict.subject.unlisted === true)
    return open.map((one) => ({ missing: missingCount(verdict.subject), severity: one.demand.severity }))
  return open.flatMap((one) =>
    missingOf(one, installation).map((missing) => ({ missing, severity: one.demand.severity })),
  )
}

function toFact({
  missing,
  verdicts,
}: {
  missing: Missing
  verdicts: readonly { key: string; rule: string; severity: Severity }[]
}): MissingFact {
  return {
    ...missing,
    decides: new Set(verdicts.map((one) => one.key)).size,
    worst: worstOf(verdicts.map((one) => one.severity)) ?? 'advice',
    rules: [...new Set(verdicts.map((one) => one.rule))].sort(),
  }
}

function compareFacts(a: MissingFact, b: MissingFact): number {
  const byWorst = severities.indexOf(a.worst) - severities.indexOf(b.worst)
  const byName = `${a.subject} ${a.fact}` < `${b.subject} ${b.fact}` ? -1 : 1
  return byWorst || b.decides - a.decides || byName
}
