import { tellEvidence, type Evidence } from '../findings/index.js'
import type { JudgedDemand } from '../judging/index.js'
import type { Thing } from '../model/index.js'
import { allLeaves, openLeaves, type Demand } from '../rulebook/index.js'
import type { UnitSystem } from '../units/index.js'
import { row, turnRow, witnessRow } from './finding-item.js'
import { tellKnown, tellNumbers } from './numbers.js'
import { effectiveWords } from './rule-sheet.js'
import type { Item, Row } from './sheet.js'
import { verdictWords } from './spoken-words.js'

/** One demand for one thing: whether it is in force, when it applies, what was found, and what is missing. */
export function judgedDemandItem(
  demand: Demand,
  judged: JudgedDemand | undefined,
  subject: Thing,
  system: UnitSystem,
): Item {
  const head = `${demand.severity}, ${demand.authority.name}: ${judged === undefined ? 'not asked' : verdictWords[judged.verdict].toLowerCase()}`
  if (judged === undefined)
    return {
      head,
      aside: demand.id,
      rows: [
        {
          label: 'Reason',
          text: 'The document does not name this authority, or the demand is judged on what is stated only.',
        },
      ],
    }
  const evidence = tellEvidence(judged.require, 'require', subject, system)
  const witnesses = allLeaves(judged.require).flatMap(({ left, truth }) => [
    witnessRow(left.witness, left.state === 'number' ? [{ si: left }] : []),
    truth === -1 ? turnRow(left.turningPoint) : undefined,
  ])
  const rows: readonly (Row | undefined)[] = [
    ...datesRows(judged, subject, system),
    ...(judged.when === undefined ? [] : tellEvidence(judged.when, 'when', subject, system)).map((one) =>
      row('When', `${tellNumbers(one, subject.kind.name, 'looked for')}: ${one.result}`),
    ),
    ...(judged.verdict === 'not-applicable'
      ? []
      : [...evidence.map((one) => row('Found', evidenceWords(one, subject))), ...witnesses]),
    row('Missing', missingWords(judged)),
    exemptedRow(judged),
  ]
  return { head, aside: demand.id, rows: rows.filter((one) => one !== undefined) }
}

function evidenceWords(evidence: Evidence, { kind }: Thing): string {
  const known = evidence.value === undefined ? '' : `; ${tellKnown(evidence)}`
  return `${tellNumbers(evidence, kind.name)}: ${evidence.result}${known}`
}

/** Whether the demand is in force for this house: its authority named, its dates fitting. */
function datesRows(
  { demand, applies, dates }: JudgedDemand,
  subject: Thing,
  system: UnitSystem,
): readonly (Row | undefined)[] {
  if (dates === undefined) return []
  const unmet = tellEvidence(dates, 'when', subject, system).filter(({ result }) => result !== 'holds')
  const named = unmet.every(({ fact }) => fact !== 'jurisdiction.authorities')
  if (!named)
    return [
      row(
        'Force',
        applies === -1
          ? 'not heard: the document does not name this authority'
          : 'the document does not say whether this authority has a say',
      ),
    ]
  if (demand.effective === undefined) return []
  const words = effectiveWords(demand.effective)
  const stated = unmet.map(({ value }) => value ?? 'not known').join(', ')
  if (applies === 1) return [row('Force', `in force: ${words}`)]
  return [
    row(
      'Force',
      applies === -1 ? `not in force: ${words} (here: ${stated})` : `cannot be told: ${words} (here: ${stated})`,
    ),
  ]
}

function missingWords({ dates, when, require, exempted }: JudgedDemand): string {
  const open = [dates, when, require, exempted?.judged].flatMap((one) => (one === undefined ? [] : openLeaves(one)))
  const missing = open.flatMap(({ left, right }) => [...left.missing, ...right.flatMap((one) => one.missing)])
  return [...new Set(missing.map(({ subject, fact }) => `${fact} of ${subject}`))].join('; ')
}

function exemptedRow({ demand, exempted }: JudgedDemand): Row | undefined {
  const exemption = exempted === undefined ? undefined : demand.exemptions[exempted.index]
  if (exempted === undefined || exemption === undefined || exempted.truth < 0) return undefined
  const by = `${exemption.authority.name}, ${exemption.clause}`
  return {
    label: 'Exempt',
    text: exempted.truth === 1 ? `let go by ${by}` : `perhaps let go by ${by}: confirm with the office`,
  }
}
