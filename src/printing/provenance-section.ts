import type { OverlayTold, Report } from '../findings/index.js'
import { row } from './finding-item.js'
import type { Section } from './sheet.js'
import { counted } from './spoken-words.js'

/** What was asked, how well it is known, and by which rules it was judged. */
export function provenanceSection({ tally, known, provenance }: Report, opened: readonly string[]): Section {
  const { rulebook, document, judgedOn, phase } = provenance
  const rows = [
    row('Asked', tallyText(tally)),
    row('Values', knownText(known)),
    row(
      'Rules',
      [
        ...rulebook.ruleSets.map(({ name, version }) => `${name} ${version}`),
        `rulebook ${shortly(rulebook.hash)}`,
        provenance.package,
      ].join('; '),
    ),
    ...rulebook.overlays.map((overlay) => row('Overlay', overlayText(overlay))),
    rulebook.overlays.length === 0 ? row('Overlay', 'none was opened: no town or utility was heard') : undefined,
    row('Judged', `on ${judgedOn}; phase ${phase}; document ${shortly(document)}`),
    row('Opened', opened.join(', ')),
  ]
  return {
    heading: 'WHAT THIS RESTS ON',
    tone: 'plain',
    numbered: false,
    items: [{ rows: rows.filter((one) => one !== undefined) }],
  }
}

/** Enough of a digest to tell two apart by eye; the JSON report has all of it. */
function shortly(digest: string): string {
  return digest.slice(0, 12)
}

function tallyText({ asked, pass, fail, undecided, notApplicable, broken, accepted, later }: Report['tally']): string {
  const rest = [
    broken === 0 ? undefined : `${broken} broke`,
    accepted === 0 ? undefined : `${accepted} accepted in writing`,
    later === 0 ? undefined : `${counted(later, 'rule waits', 'rules wait')} for a later phase`,
  ].filter((part) => part !== undefined)
  return [
    `${counted(asked, 'question', 'questions')} of all severities: ${pass} met, ${fail} not met, ${undecided} cannot be told, ${notApplicable} not applicable`,
    ...rest,
  ].join('; ')
}

function knownText({ values, photo, gauge, typed, assumed, template }: Report['known']): string {
  const kinds = [
    `${photo} shown by a photo`,
    `${gauge} measured`,
    `${typed} only typed`,
    assumed === 0 ? undefined : `${assumed} assumed`,
    template === 0 ? undefined : `${template} from a form`,
  ]
  return `${values} given: ${kinds.filter((part) => part !== undefined).join(', ')}`
}

function overlayText({
  id,
  name,
  layer,
  official,
  writtenBy,
  reviewedBy,
  lastVerified,
  stale,
  named,
}: OverlayTold): string {
  const parts = [
    `${name} (${id}, ${layer})`,
    `${official ? 'official' : 'UNOFFICIAL'}, written by ${writtenBy ?? 'nobody named'}`,
    reviewedBy === undefined ? undefined : `reviewed by ${reviewedBy}`,
    `last verified ${lastVerified ?? 'never'}${stale === true ? ', more than two years ago: ask the office what changed' : ''}`,
    named ? undefined : 'not named by the document, so not asked',
  ]
  return parts.filter((part) => part !== undefined).join('; ')
}
