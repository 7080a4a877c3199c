import type { DemandVerdict, Verdict } from '../judging/index.js'
import type { Severity } from '../rulebook/index.js'
import type { UnitSystem } from '../units/index.js'
import { judgedDemandItem } from './judged-demand-item.js'
import type { Section, Tone } from './sheet.js'
import { verdictWords } from './spoken-words.js'

/** What a rule came to for one thing: every demand with its numbers, how they are known, and why it counts or does not. */
export function verdictSection(verdict: Verdict, system: UnitSystem): Section {
  const { rule, subject } = verdict
  if (verdict.type === 'broken')
    return { heading: `${subject.id}: THE CHECK BROKE`, tone: 'must', numbered: false, note: verdict.error, items: [] }
  const could = verdict.couldBe === undefined ? '' : `; could be ${verdict.couldBe}`
  const heading = `${subject.id}, ${subject.name ?? subject.kind.spoken}: ${verdictWords[verdict.verdict]}${verdict.severity === undefined ? '' : ` (${verdict.severity}${could})`}`
  return {
    heading,
    tone: toneOf(verdict.verdict, verdict.severity),
    numbered: false,
    items: rule.demands.map((demand) =>
      judgedDemandItem(
        demand,
        verdict.demands.find((one) => one.demand === demand),
        subject,
        system,
      ),
    ),
  }
}

/** What a rule came to for several things, a line each. */
export function verdictsSection(verdicts: readonly Verdict[]): Section {
  const rows = verdicts.map((verdict) => {
    if (verdict.type === 'broken') return { label: 'BROKE', text: verdict.subject.id }
    return {
      label: verdict.severity ?? '',
      text: `${verdict.subject.id}: ${verdictWords[verdict.verdict].toLowerCase()}`,
      tone: toneOf(verdict.verdict, verdict.severity),
    }
  })
  return {
    heading: `HERE (${rows.length})`,
    tone: 'plain',
    numbered: false,
    note: 'Name one of them to see its numbers.',
    items: [{ rows }],
  }
}

function toneOf(verdict: DemandVerdict, severity: Severity = 'advice'): Tone {
  if (verdict === 'fail') return severity
  if (verdict === 'undecided') return 'open'
  return verdict === 'pass' ? 'clear' : 'plain'
}
