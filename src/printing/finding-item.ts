import type { TurningPoint } from '../facts/index.js'
import type { Evidence, Finding } from '../findings/index.js'
import { tellOther, tellSpoken } from './demanded-by.js'
import { decisive, tellKnown, tellNumbers } from './numbers.js'
import type { Item, Row } from './sheet.js'
import { spokenPlaces } from './spoken-words.js'

/** A failing finding in full: number against demand, how it is known, who demands it, why, and what to do. */
export function findingItem(finding: Finding): Item {
  const { because, remedy, caution, witness, turningPoint, restsOn } = finding
  const spoke = finding.demands.find((demand) => demand.spoke)
  const others = finding.demands.filter((demand) => !demand.spoke && demand.verdict !== 'not-applicable')
  const numbers = decisive(finding)
  const rows: readonly (Row | undefined)[] = [
    ...numbers.map((one) => ({ label: 'Found', text: tellNumbers(one, finding.subject.kind) })),
    row('Known', knownText(finding)),
    witnessRow(witness, numbers),
    turnRow(turningPoint),
    restsOn === 'assumption' && numbers.every((one) => one.standing !== 'assumed')
      ? row('Rests', 'ON AN ASSUMPTION: find out before acting on it')
      : undefined,
    row('Asked', spoke && tellSpoken(spoke, finding)),
    ...others.map((demand) => row('Also', tellOther(demand, spoke))),
    ...exemptionRows(finding),
    row('Missing', missingText([finding])),
    row('Why', because),
    row('Do', remedy),
    cautionRow(caution),
  ]
  return {
    head: headOf([finding]),
    aside: finding.rule,
    text: finding.message,
    rows: rows.filter((one) => one !== undefined),
  }
}

export function row(label: string, text: string | undefined): Row | undefined {
  return text === undefined || text === '' ? undefined : { label, text }
}

/** A way that was walked, or the terms that an amount is made of. */
export function witnessRow(
  witness: readonly string[] | undefined,
  numbers: readonly Pick<Evidence, 'si'>[],
): Row | undefined {
  return numbers.some(({ si }) => si !== undefined)
    ? row('Made of', witness?.join(', '))
    : row('Way', witness?.join(' -> '))
}

/** Where on the way it goes wrong: "ISO1: it can be shut". */
export function turnRow(turningPoint: TurningPoint | undefined): Row | undefined {
  if (turningPoint === undefined) return undefined
  const { at, because } = turningPoint
  return row('Wrong at', because === undefined ? at : `${at}: ${because}`)
}

/** Never left out, and marked by its word. */
export function cautionRow(caution: string | undefined): Row | undefined {
  return caution === undefined ? undefined : { label: 'CAUTION', text: caution, tone: 'caution' }
}

/** What a citation let go, or what the office has to confirm. */
export function exemptionRows({ demands }: Finding): readonly Row[] {
  return demands.flatMap(({ exempted }) => (exempted === undefined ? [] : [{ label: 'Exempt', text: exempted }]))
}

/** Place and things: "Relief: RV1, relief valve". */
export function headOf(findings: readonly Finding[]): string {
  const [first] = findings
  if (first === undefined) return ''
  const { place, spoken, name } = first.subject
  const where = spokenPlaces[place]
  if (findings.length > 1) return `${where}: ${findings.map((one) => one.subject.id).join(', ')}`
  return `${where}: ${first.subject.id === first.subject.kind ? spoken : `${first.subject.id}, ${name ?? spoken}`}`
}

/** Facts that would decide, those of one name together: "outsideSleeping of bath, bed-1", or of each of several things in question. */
export function missingText(findings: readonly Finding[]): string {
  const missing = findings.flatMap((finding) => finding.missing ?? [])
  const facts = [...new Set(missing.map((one) => one.fact))]
  return facts
    .map(
      (fact) =>
        `${fact} of ${holders(
          missing.filter((one) => one.fact === fact).map((one) => one.subject),
          findings,
        )}`,
    )
    .join('; ')
}

function holders(ids: readonly string[], findings: readonly Finding[]): string {
  const named = [...new Set(ids)]
  const all =
    findings.length > 1 &&
    findings.every(({ subject }) => named.includes(subject.id)) &&
    named.length === findings.length
  return all ? 'each' : named.join(', ')
}

function knownText(finding: Finding): string {
  return [...new Set(decisive(finding).map(tellKnown))].join('; ')
}
