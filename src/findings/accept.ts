import type { Facts } from '../facts/index.js'
import { problemList, type ApprovedModification, type Problem, type Thing } from '../model/index.js'
import { summarize } from '../judging/index.js'
import { isLess, parseQuantity } from '../units/index.js'
import {
  judgeCondition,
  readCondition,
  valueReading,
  type Condition,
  type Rule,
  type Rulebook,
} from '../rulebook/index.js'
import type { JudgedVerdict } from './tell-finding.js'

/** An approved modification against the rule and thing that it names. */
export interface Acceptance {
  readonly modification: ApprovedModification
  readonly rule: Rule
  readonly subject: Thing
  readonly accepts: Condition
}

export type AcceptancesRead =
  | { readonly ok: true; readonly acceptances: readonly Acceptance[] }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/** Finds the rule, the thing and the facts that approved modifications name. */
export function readAcceptances(facts: Facts, rulebook: Rulebook): AcceptancesRead {
  const problems = problemList()
  const acceptances = facts.installation.approved.flatMap((modification) => {
    const steps = modification.pointer.split('/').slice(1)
    const rule = rulebook.rulesById.get(modification.rule)
    const subject = facts.strict.installation.things.get(modification.subject)
    if (rule === undefined) problems.add('unknown-rule', [...steps, 'rule'], `There is no rule "${modification.rule}".`)
    if (subject === undefined)
      problems.add('unknown-id', [...steps, 'subject'], `There is no "${modification.subject}".`)
    if (rule === undefined || subject === undefined) return []
    const leaves = Object.entries(modification.accepts).map(([fact, limit]) => ({ [fact]: limit }))
    const accepts = readCondition(
      { all: leaves },
      [...steps, 'accepts'],
      valueReading(rule.subject, rulebook.facts, problems),
    )
    return accepts === undefined ? [] : [{ modification, rule, subject, accepts }]
  })
  return problems.found.length > 0 ? { ok: false, problems: problems.found } : { ok: true, acceptances }
}

/** What an acceptance takes away from a verdict, and what stays: a `stop` always stays. */
export function split(
  verdict: JudgedVerdict,
  acceptance: Acceptance,
): { readonly left: JudgedVerdict; readonly accepted: JudgedVerdict } {
  const stops = verdict.demands.filter((one) => one.demand.severity === 'stop')
  const others = verdict.demands.filter((one) => one.demand.severity !== 'stop')
  const of = (demands: JudgedVerdict['demands']): JudgedVerdict => {
    const summary = summarize(verdict.rule, acceptance.subject, demands)
    return summary.type === 'judged' ? summary : verdict
  }
  return { left: of(stops), accepted: of(others) }
}

/** The acceptance that covers a failing verdict today: exactly what was accepted or better, not expired, dates certain. */
export function acceptanceFor(
  verdict: JudgedVerdict,
  acceptances: readonly Acceptance[],
  facts: Facts,
  judgedOn: string | undefined,
): Acceptance | undefined {
  if (verdict.verdict !== 'fail') return undefined
  return acceptances.find(
    ({ rule, subject, accepts, modification }) =>
      rule.id === verdict.rule.id &&
      subject.id === verdict.subject.id &&
      judgeCondition(accepts, facts.strict, subject).truth === 1 &&
      isCurrent(modification, judgedOn),
  )
}

function isCurrent({ expires }: ApprovedModification, judgedOn: string | undefined): boolean {
  if (expires === undefined) return true
  const today = judgedOn === undefined ? undefined : parseQuantity(judgedOn, 'date')
  return today?.ok === true && expires.value.type === 'quantity' && isLess(today.high, expires.value.low)
}
