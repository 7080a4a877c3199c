import type { Facts } from '../facts/index.js'
import { isDue, UnreadableInstallation } from '../model/index.js'
import type { Verdict } from '../judging/index.js'
import { digestOf, worstOf, type Rulebook } from '../rulebook/index.js'
import { acceptanceFor, readAcceptances, split, type Acceptance } from './accept.js'
import { advisory } from './advisory.js'
import { countKnown } from './known-values.js'
import { oneMoreFindings } from './one-more.js'
import { inOrder } from './order.js'
import { headlineOf, outcomeOf } from './outcome.js'
import { packageName } from './package-name.js'
import { rankMissing } from './rank-missing.js'
import type { AcceptedFinding, PassedVerdict, Report, ReportOptions } from './report.js'
import { tellOverlay } from './tell-overlay.js'
import { tellEvidence } from './tell-evidence.js'
import { tellFinding, type JudgedVerdict, type Telling } from './tell-finding.js'
import { unheardIn } from './unheard.js'

/** Everything that a report is made of. */
export interface Judgement {
  readonly facts: Facts
  readonly rulebook: Rulebook
  readonly verdicts: readonly Verdict[]
  /** The document as written, for its digest. */
  readonly document: unknown
}

/**
 * Words every verdict: the one gate through which all results pass.
 *
 * @throws UnreadableInstallation when an approved modification names what is not there
 */
export function writeReport(judgement: Judgement, options: ReportOptions = {}): Report {
  const { facts, rulebook, verdicts } = judgement
  const approvals = readAcceptances(facts, rulebook)
  if (!approvals.ok) throw new UnreadableInstallation(approvals.problems)
  const { installation } = facts
  const telling: Telling = { rulebook, facts, installation, system: installation.units }
  const judged = verdicts.filter((verdict): verdict is JudgedVerdict => verdict.type === 'judged')
  const { left, accepted } = setAside(judged, approvals.acceptances, facts, options)
  const findings = inOrder([
    ...left
      .filter((verdict) => verdict.subject.unlisted !== true)
      .flatMap((verdict) => tellFinding(verdict, telling) ?? []),
    ...oneMoreFindings(left),
  ])
  const broken = verdicts.flatMap((verdict) => (verdict.type === 'broken' ? [brokenOf(verdict)] : []))
  const weighed = { findings, contradictions: facts.contradictions, broken, unheard: unheardIn(installation, rulebook) }
  const outcome = outcomeOf(weighed)
  const known = countKnown(installation)
  return {
    advisory,
    outcome,
    headline: headlineOf(outcome, weighed, known),
    ...(installation.name === undefined ? {} : { name: installation.name }),
    tally: tallyOf(judgement, accepted.length),
    ...weighed,
    accepted: acceptedFindings(accepted, telling),
    missing: rankMissing(left, installation),
    known,
    ...(options.listPassed === true ? { passed: passedOf(judged, telling) } : {}),
    provenance: {
      package: packageName,
      rulebook: {
        ruleSets: rulebook.ruleSets,
        overlays: rulebook.overlays.map((overlay) => tellOverlay(overlay, installation, options.judgedOn)),
        hash: rulebook.hash,
      },
      document: digestOf(judgement.document),
      judgedOn: options.judgedOn ?? 'not stated',
      phase: installation.phase ?? 'not stated: everything was asked',
    },
  }
}

interface SetAside {
  readonly verdict: JudgedVerdict
  readonly acceptance: Acceptance
}

function setAside(
  judged: readonly JudgedVerdict[],
  acceptances: readonly Acceptance[],
  facts: Facts,
  { judgedOn }: ReportOptions,
): { readonly left: readonly JudgedVerdict[]; readonly accepted: readonly SetAside[] } {
  if (acceptances.length === 0) return { left: judged, accepted: [] }
  const accepted: SetAside[] = []
  const left = judged.map((verdict) => {
    const acceptance = acceptanceFor(verdict, acceptances, facts, judgedOn)
    if (acceptance === undefined) return verdict
    const parts = split(verdict, acceptance)
    if (parts.accepted.verdict === 'fail') accepted.push({ verdict: parts.accepted, acceptance })
    return parts.left
  })
  return { left, accepted }
}

function acceptedFindings(accepted: readonly SetAside[], telling: Telling): readonly AcceptedFinding[] {
  return accepted.flatMap(({ verdict, acceptance: { modification } }) => {
    const finding = tellFinding(verdict, telling)
    return finding === undefined
      ? []
      : [
          {
            finding,
            by: modification.by,
            evidence: modification.evidence,
            ...(modification.expires === undefined ? {} : { expires: modification.expires.text }),
          },
        ]
  })
}

function brokenOf({ rule, subject, error }: Verdict & { readonly type: 'broken' }): Report['broken'][number] {
  return {
    rule: rule.id,
    subject: subject.id,
    severity: worstOf(rule.demands.map((demand) => demand.severity)) ?? 'advice',
    error,
  }
}

function tallyOf({ verdicts, rulebook, facts }: Judgement, accepted: number): Report['tally'] {
  const count = (word: string): number =>
    verdicts.filter((verdict) => verdict.type === 'judged' && verdict.verdict === word).length
  return {
    asked: verdicts.length,
    pass: count('pass'),
    fail: count('fail') - accepted,
    undecided: count('undecided'),
    notApplicable: count('not-applicable'),
    broken: verdicts.filter((verdict) => verdict.type === 'broken').length,
    accepted,
    later: rulebook.rules.filter((rule) => !isDue(rule.from, facts.installation.phase)).length,
  }
}

function passedOf(judged: readonly JudgedVerdict[], { system }: Telling): readonly PassedVerdict[] {
  return judged.flatMap(({ verdict, rule, subject, demands }) =>
    verdict === 'pass' || verdict === 'not-applicable'
      ? [
          {
            rule: rule.id,
            subject: subject.id,
            verdict,
            evidence: demands
              .filter((one) => one.verdict === 'pass')
              .flatMap((one) => tellEvidence(one.require, 'require', subject, system)),
          },
        ]
      : [],
  )
}
