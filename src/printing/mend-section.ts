import { tellEvidence, type Finding } from '../findings/index.js'
import type { JudgedDemand, Verdict } from '../judging/index.js'
import type { UnitSystem } from '../units/index.js'
import { cautionRow, row } from './finding-item.js'
import { limitWords } from './numbers.js'
import type { Question } from './questions.js'
import type { Row, Section } from './sheet.js'
import { spokenFact } from './spoken-words.js'

/** What a rule came to for one thing, in every form that its mending is told from. */
export interface Mending {
  readonly verdict: Verdict
  readonly finding: Finding
  /** What the report of this verdict alone asks. */
  readonly questions: readonly Question[]
  readonly system: UnitSystem
}

/** What would make a thing right by a rule: what has to hold and what to do about it, or what has to be found out first. */
export function mendSection({ verdict, finding, questions, system }: Mending): Section {
  const fails = finding.verdict === 'fail'
  const rows = fails ? mendRows(verdict, finding, system) : questions.map(findOut)
  const heading = fails ? 'WHAT WOULD MAKE IT RIGHT' : 'WHAT WOULD TELL'
  return { heading, tone: 'plain', numbered: false, items: [{ rows: rows.filter((one) => one !== undefined) }] }
}

function mendRows(verdict: Verdict, { remedy, caution }: Finding, system: UnitSystem): readonly (Row | undefined)[] {
  const demands = verdict.type === 'judged' ? verdict.demands : []
  const failing = demands.filter((one) => one.verdict === 'fail')
  const needs = failing.flatMap((one) => needsOf(one, verdict, system))
  return [...new Set(needs)].map((text) => row('Needs', text)).concat([row('Do', remedy), cautionRow(caution)])
}

function needsOf({ demand, require }: JudgedDemand, { subject }: Verdict, system: UnitSystem): readonly string[] {
  const broken = tellEvidence(require, 'require', subject, system).filter(({ result }) => result === 'does not hold')
  return broken.map(({ fact, operator, demanded, value }) => {
    const wanted = demanded === undefined ? 'something else' : limitWords(operator, demanded)
    const now = value === undefined ? '' : `, instead of ${value}`
    return `${spokenFact(fact, subject.kind.name)} of ${subject.id}: ${wanted}${now} (${demand.severity})`
  })
}

function findOut({ asks, subject, fact, answer }: Question): Row | undefined {
  if (asks === 'count') return row('Find out', `how many there are of ${subject}`)
  return row('Find out', `${fact} of ${subject}${answer === undefined ? '' : `: ${answer}`}`)
}
