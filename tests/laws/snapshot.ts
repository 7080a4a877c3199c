import { gatherFacts } from '../../src/facts/index.js'
import { writeReport, type Outcome } from '../../src/findings/index.js'
import { judge, type DemandVerdict, type Verdict } from '../../src/judging/index.js'
import { readInstallation, type Equipment } from '../../src/model/index.js'
import { allLeaves, isBinding, type Rulebook, type Severity } from '../../src/rulebook/index.js'

/** What the law of information speaks of: every verdict and demand by rule and subject, and the outcome. */
export interface Snapshot {
  readonly outcome: Outcome
  readonly contradictions: readonly string[]
  readonly verdicts: ReadonlyMap<string, Told>
}

export interface Told {
  readonly rule: string
  readonly subject: string
  readonly kind: string
  readonly verdict: DemandVerdict | 'broken'
  readonly severity?: Severity
  readonly couldBe?: Severity
  readonly demands: ReadonlyMap<
    string,
    {
      readonly verdict: DemandVerdict
      readonly severity: Severity
      readonly binding: boolean
      readonly assumed: boolean
    }
  >
}

export interface Look {
  readonly rulebook: Rulebook
  readonly equipment: readonly Equipment[]
}

const judgedOn = '2025-11-01'

export function look(document: unknown, { rulebook, equipment }: Look): Snapshot {
  const facts = gatherFacts(readInstallation(document, rulebook.model, equipment), rulebook.facts)
  const verdicts = judge(rulebook, facts)
  const report = writeReport({ facts, rulebook, verdicts, document }, { judgedOn })
  return {
    outcome: report.outcome,
    contradictions: report.contradictions.map((one) => one.message),
    verdicts: new Map(verdicts.map((verdict) => [`${verdict.rule.id} ${verdict.subject.id}`, tell(verdict)])),
  }
}

function tell(verdict: Verdict): Told {
  const where = { rule: verdict.rule.id, subject: verdict.subject.id, kind: verdict.subject.kind.name }
  if (verdict.type === 'broken') return { ...where, verdict: 'broken', demands: new Map() }
  return {
    ...where,
    verdict: verdict.verdict,
    ...(verdict.severity === undefined ? {} : { severity: verdict.severity }),
    ...(verdict.couldBe === undefined ? {} : { couldBe: verdict.couldBe }),
    demands: new Map(
      verdict.demands.map((one) => [
        one.demand.id,
        {
          verdict: one.verdict,
          severity: one.demand.severity,
          binding: isBinding(one.demand.severity),
          assumed: [one.dates, one.when, one.require, one.exempted?.judged].some(
            (judged) =>
              judged !== undefined &&
              allLeaves(judged).some(({ left, right }) => left.assumed || right.some((side) => side.assumed)),
          ),
        },
      ]),
    ),
  }
}
