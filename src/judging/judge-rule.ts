import type { Facts } from '../facts/index.js'
import type { Thing } from '../model/index.js'
import { isWorse, type Demand, type Rule, type Severity } from '../rulebook/index.js'
import { judgeDemand } from './judge-demand.js'
import type { DemandVerdict, JudgedDemand, Verdict } from './verdict.js'

/** Judges a rule for one subject: every demand by itself, the worst that fails speaks. */
export function judgeRule(
  facts: Facts,
  rule: Rule,
  subject: Thing,
  demands: readonly Demand[] = rule.demands,
): Verdict {
  try {
    return summarize(
      rule,
      subject,
      demands.map((demand) => judgeDemand(facts, rule, demand, subject)),
    )
  } catch (reason) {
    return { type: 'broken', rule, subject, error: reason instanceof Error ? reason.message : String(reason) }
  }
}

/** The verdict of a rule from its judged demands. */
export function summarize(rule: Rule, subject: Thing, demands: readonly JudgedDemand[]): Verdict {
  const failing = worstWith('fail', demands)
  const open = worstWith('undecided', demands)
  if (failing !== undefined) {
    const judged = { type: 'judged', rule, subject, demands, verdict: 'fail', severity: failing } as const
    return open !== undefined && isWorse(open, failing) ? { ...judged, couldBe: open } : judged
  }
  if (open !== undefined) return { type: 'judged', rule, subject, demands, verdict: 'undecided', severity: open }
  const verdict = demands.some((one) => one.verdict === 'pass') ? 'pass' : 'not-applicable'
  return { type: 'judged', rule, subject, demands, verdict }
}

function worstWith(verdict: DemandVerdict, demands: readonly JudgedDemand[]): Severity | undefined {
  let worst: Severity | undefined
  for (const one of demands) {
    if (one.verdict === verdict && (worst === undefined || isWorse(one.demand.severity, worst)))
      worst = one.demand.severity
  }
  return worst
}
