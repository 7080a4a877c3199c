import type { Facts } from '../facts/index.js'
import type { Thing } from '../model/index.js'
import { isWorse, worstOf, type Demand, type Rule } from '../rulebook/index.js'
import { judgeDemand } from './judge-demand.js'
import type { JudgedDemand, Verdict } from './verdict.js'

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
  const failing = worstOf(demands.filter((one) => one.verdict === 'fail').map((one) => one.demand.severity))
  const open = worstOf(demands.filter((one) => one.verdict === 'undecided').map((one) => one.demand.severity))
  const base = { type: 'judged', rule, subject, demands } as const
  if (failing !== undefined) {
    const worse = open !== undefined && isWorse(open, failing)
    return { ...base, verdict: 'fail', severity: failing, ...(worse ? { couldBe: open } : {}) }
  }
  if (open !== undefined) return { ...base, verdict: 'undecided', severity: open }
  return { ...base, verdict: demands.some((one) => one.verdict === 'pass') ? 'pass' : 'not-applicable' }
}
