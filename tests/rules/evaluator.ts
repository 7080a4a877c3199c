import type { ExpectedVerdict } from '../../src/authoring/index.js'
import { compare, holds, least, most, not, type Ask, type Said, type Truth } from './conditions.js'

type Data = Readonly<Record<string, unknown>>

const severities = ['stop', 'must', 'should', 'advice'] as const
type Severity = (typeof severities)[number]

/**
 * A second reading of the rule language, written from the book and sharing nothing with src: each demand is the implication
 * "when it applies, it is required"; the worst that fails speaks; a worse one that is open is told as what it could be.
 */
export function evaluate(rule: unknown, facts: Data): ExpectedVerdict {
  const { demands, when, measure } = rule as {
    readonly demands: readonly Data[]
    readonly when?: unknown
    readonly measure?: Data
  }
  const judged = demands.map((demand) => {
    const severity = severityOf(demand.severity)
    const seen = looking(facts, severity === 'stop' || severity === 'must', false)
    const proved = looking(facts, severity === 'stop' || severity === 'must', demand.proof === 'photo')
    const applies = least([when, demand.when].flatMap((one) => (one === undefined ? [] : [holds(one, seen)])))
    return { severity, verdict: word(applies, required(demand, measure, proved)) }
  })
  const worst = (verdict: string): Severity | undefined =>
    severities.find((severity) => judged.some((one) => one.verdict === verdict && one.severity === severity))
  const [failing, open] = [worst('fail'), worst('undecided')]
  if (failing !== undefined) {
    const worse = open !== undefined && severities.indexOf(open) < severities.indexOf(failing)
    return { verdict: 'fail', severity: failing, ...(worse ? { couldBe: open } : {}) }
  }
  if (open !== undefined) return { verdict: 'undecided' }
  return { verdict: judged.some((one) => one.verdict === 'pass') ? 'pass' : 'not-applicable' }
}

function severityOf(word: unknown): Severity {
  const found = severities.find((severity) => severity === word)
  if (found === undefined) throw new Error(`the book has no severity "${String(word)}"`)
  return found
}

function required(demand: Data, measure: Data | undefined, ask: Ask): Truth {
  if (demand.require !== undefined) return holds(demand.require, ask)
  return compare(String(measure?.fact), String(measure?.operator), demand.value, ask)
}

function word(applies: Truth, truth: Truth): 'pass' | 'fail' | 'undecided' | 'not-applicable' {
  if (applies === -1) return 'not-applicable'
  const implied = most([not(applies), truth])
  return implied === 1 ? 'pass' : implied === 0 ? 'undecided' : 'fail'
}

/** What is known of a fact when only stated values count, or only those that a photo shows. */
function looking(facts: Data, statedOnly: boolean, photoOnly: boolean): Ask {
  return (path) => {
    const raw = facts[path]
    const long = typeof raw === 'object' && raw !== null && !Array.isArray(raw) ? (raw as Data) : { value: raw }
    const assumed = long.standing !== undefined && long.standing !== 'stated'
    const hidden = (statedOnly && assumed) || (photoOnly && long.evidence === undefined)
    return hidden || long.value === 'unknown' ? undefined : (long.value as Said)
  }
}
