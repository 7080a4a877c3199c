import type { Finding, Report } from '../findings/index.js'
import { severities } from '../rulebook/index.js'
import { completeSection, isCompletenessQuestion } from './complete-section.js'
import { findingItem } from './finding-item.js'
import { missingSection } from './missing-section.js'
import { openItems } from './open-items.js'
import { acceptedSection, doubtSections, passedSections } from './other-sections.js'
import { provenanceSection } from './provenance-section.js'
import type { Section, Sheet, Tone } from './sheet.js'
import { failingHeadings, openHeadings } from './spoken-words.js'

/** What stands at the foot of a page beside the report. */
export interface LayOutOptions {
  /** Files that were opened for this report, to be told at its foot. */
  readonly opened?: readonly string[]
  /** What else there is to tell, before what it all rests on. */
  readonly more?: readonly Section[]
}

/** Arranges a report as a page: what to mend, what to find out, what it rests on. */
export function layOut(report: Report, { opened = [], more = [] }: LayOutOptions = {}): Sheet {
  const findings = report.findings.filter((finding) => !isCompletenessQuestion(finding))
  return {
    title: report.name ?? 'Installation without a name',
    about: `${phaseText(report)}, judged on ${report.provenance.judgedOn}`,
    headline: { text: report.headline, tone: outcomeTones[report.outcome] },
    caution: 'Advice, a self-check, no approval. Gas smell or alarm: get out, call for help.',
    sections: [
      ...severities.flatMap((severity) => findingSections(findings.filter((finding) => finding.severity === severity))),
      ...doubtSections(report),
      ...completeSection(report.findings),
      ...missingSection(report.missing),
      ...acceptedSection(report.accepted),
      ...passedSections(report.passed),
      ...more,
      provenanceSection(report, opened),
    ],
    advisory: report.advisory,
  }
}

const outcomeTones: Readonly<Record<Report['outcome'], Tone>> = { failing: 'must', open: 'open', clear: 'clear' }

function phaseText({ provenance: { phase } }: Report): string {
  return phase === 'not stated: everything was asked' ? 'all phases' : `phase ${phase}`
}

/** Findings of one severity: those that fail, then those that cannot be told. */
function findingSections(findings: readonly Finding[]): readonly Section[] {
  const failing = findings.filter(({ verdict }) => verdict === 'fail')
  const open = findings.filter(({ verdict }) => verdict === 'undecided')
  return [
    ...failing.slice(0, 1).map(({ severity }) => ({
      heading: `${failingHeadings[severity]} (${failing.length})`,
      tone: severity,
      numbered: true,
      items: failing.map(findingItem),
    })),
    ...open.slice(0, 1).map(({ severity }) => ({
      heading: `${openHeadings[severity]} (${open.length})`,
      tone: severity,
      numbered: true,
      items: openItems(open),
    })),
  ]
}
