import type { Finding } from '../findings/index.js'
import { severities } from '../rulebook/index.js'
import type { Row, Section } from './sheet.js'
import { joined } from './spoken-words.js'

/** How a document says how many there are. */
export const howToCount: Row = {
  label: 'Write',
  text: 'the thing itself, or none: [boiler], or complete: { boiler: 1 }',
}

/** Whether a finding asks for one more thing that may not be listed. */
export function isCompletenessQuestion({ say }: Finding): boolean {
  return say.key === 'one-more'
}

/** All questions for things that may not be listed, gathered into one block. */
export function completeSection(findings: readonly Finding[]): readonly Section[] {
  const asked = findings.filter(isCompletenessQuestion)
  if (asked.length === 0) return []
  const rows = severities.flatMap((severity) => {
    const names = asked.filter((finding) => finding.severity === severity).map(nameOf)
    return names.length === 0 ? [] : [{ label: severity, text: joined(names), tone: severity }]
  })
  return [
    {
      heading: `ARE THESE COMPLETE? (${asked.length})`,
      tone: 'open',
      numbered: false,
      note: 'Is there another of these, not listed? What is neither listed nor counted could be there and be wrong. The word before them says how much hangs on it.',
      items: [{ rows: [...rows, howToCount] }],
    },
  ]
}

function nameOf({ subject, say }: Finding): string {
  const owner = say.params.owner ?? ''
  const word = subject.kind === subject.spoken ? subject.spoken : `${subject.spoken} (${subject.kind})`
  return owner === '' ? word : `${word} of ${owner}`
}
