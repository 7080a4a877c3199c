import type { AcceptedFinding, Evidence, PassedVerdict, Report } from '../findings/index.js'
import { cautionRow, headOf, row } from './finding-item.js'
import { tellKnown, tellNumbers } from './numbers.js'
import type { Item, Row, Section } from './sheet.js'

/** What stands in the way of an answer beside the findings: nobody heard, two things said at once, a check that broke. */
export function doubtSections({ unheard, contradictions, broken }: Report): readonly Section[] {
  return [
    ...section(
      'WHO HAS NOT BEEN HEARD',
      'must',
      unheard.map(({ message }) => ({ text: message, rows: [] })),
    ),
    ...section(
      'THE DOCUMENT CONTRADICTS ITSELF',
      'must',
      contradictions.map(({ subject, fact, message }) => ({ head: `${subject}: ${fact}`, text: message, rows: [] })),
    ),
    ...section(
      'CHECKS THAT BROKE',
      'must',
      broken.map(({ rule, subject, severity, error }) => ({
        head: subject,
        aside: rule,
        text: `This check broke, so it says nothing. It could have been "${severity}".`,
        rows: [{ label: 'Error', text: error }],
      })),
    ),
  ]
}

/** Findings that an official accepted in writing; they count neither as wrong nor as held. */
export function acceptedSection(accepted: readonly AcceptedFinding[]): readonly Section[] {
  return section('ACCEPTED IN WRITING, NOT COUNTED', 'plain', accepted.map(acceptedItem))
}

function acceptedItem({ finding, by, evidence, expires }: AcceptedFinding): Item {
  const rows = [
    row('Accepted', `by ${by}${expires === undefined ? '' : `, until ${expires}`}`),
    row('Proof', evidence.join(', ')),
    cautionRow(finding.caution),
  ]
  return {
    head: headOf([finding]),
    aside: finding.rule,
    text: finding.message,
    rows: rows.filter((one) => one !== undefined),
  }
}

/** What holds and what does not apply, where that was asked for. */
export function passedSections(passed: readonly PassedVerdict[] | undefined): readonly Section[] {
  const of = (word: PassedVerdict['verdict']): readonly PassedVerdict[] =>
    (passed ?? []).filter(({ verdict }) => verdict === word)
  return [
    ...section(
      'HOLDS',
      'clear',
      of('pass').map((one) => ({ head: one.subject, aside: one.rule, rows: one.evidence.filter(holds).map(heldRow) })),
    ),
    ...section(
      'DOES NOT APPLY',
      'plain',
      of('not-applicable').map((one) => ({ head: one.subject, aside: one.rule, rows: [] })),
    ),
  ]
}

function holds({ result }: Evidence): boolean {
  return result === 'holds'
}

function heldRow(evidence: Evidence): Row {
  return { label: 'Found', text: `${tellNumbers(evidence)} (${tellKnown(evidence)})` }
}

function section(heading: string, tone: Section['tone'], items: readonly Item[]): readonly Section[] {
  return items.length === 0 ? [] : [{ heading: `${heading} (${items.length})`, tone, numbered: false, items }]
}
