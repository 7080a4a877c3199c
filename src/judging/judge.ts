import type { Facts } from '../facts/index.js'
import { isDue } from '../model/index.js'
import type { Authority, Demand, Rule, Rulebook } from '../rulebook/index.js'
import { judgeRule } from './judge-rule.js'
import { demandsFor, openSubjects } from './subjects.js'
import type { Verdict } from './verdict.js'

/** Asks every rule that is due of every subject it is about. */
export function judge(rulebook: Rulebook, facts: Facts): readonly Verdict[] {
  const subjects = openSubjects(facts)
  return plan(rulebook, facts).flatMap(({ rule, demands }) =>
    subjects(rule).flatMap((asked) => {
      const due = demandsFor(asked, demands)
      return due.length === 0 ? [] : [judgeRule(facts, rule, asked.subject, due)]
    }),
  )
}

/** A rule with those of its demands that this document can be held to. */
export interface PlannedRule {
  readonly rule: Rule
  readonly demands: readonly Demand[]
}

/** Rules that are due, without the demands of authorities that are known not to be named. */
export function plan(rulebook: Rulebook, facts: Facts): readonly PlannedRule[] {
  const heard = hearing(facts)
  return rulebook.rules
    .filter((rule) => isDue(rule.from, facts.installation.phase))
    .map((rule) => ({ rule, demands: rule.demands.filter((demand) => heard(demand.authority)) }))
    .filter(({ demands }) => demands.length > 0)
}

/** Whether an authority may have a say: base content always, a town unless the document names others only. */
function hearing(facts: Facts): (authority: Authority) => boolean {
  const entry = facts.strict.installation.things.get('jurisdiction')?.entries.authorities
  const list = entry?.value.type === 'list' ? entry.value : undefined
  return (authority) =>
    authority.layer === 'base' || list === undefined || !list.complete || list.members.includes(authority.id)
}
