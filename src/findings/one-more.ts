import type { Thing } from '../model/index.js'
import { severities, worstOf } from '../rulebook/index.js'
import { tellSubject, type JudgedVerdict } from './tell-finding.js'
import type { Finding } from './report.js'

/** One question for each kind that may have one more: asked once, at the worst severity that hangs on it. */
export function oneMoreFindings(verdicts: readonly JudgedVerdict[]): readonly Finding[] {
  const asked = new Map<string, JudgedVerdict[]>()
  for (const verdict of verdicts) {
    if (verdict.subject.unlisted !== true || verdict.verdict !== 'undecided') continue
    asked.set(verdict.subject.id, [...(asked.get(verdict.subject.id) ?? []), verdict])
  }
  return [...asked.values()].flatMap((list) => ask(list) ?? [])
}

function ask(verdicts: readonly JudgedVerdict[]): Finding | undefined {
  const severity = worstOf(verdicts.flatMap((verdict) => verdict.severity ?? []))
  const worst = [...verdicts].sort((a, b) => rankOf(a) - rankOf(b) || (a.rule.id < b.rule.id ? -1 : 1))[0]
  if (severity === undefined || worst === undefined) return undefined
  const { subject } = worst
  const params = { kind: subject.kind.spoken, owner: subject.owner ?? '' }
  return {
    key: `one-more/${subject.id}`,
    rule: worst.rule.id,
    title: `Everything of its kind is listed`,
    verdict: 'undecided',
    severity,
    ground: worst.demands.find((one) => one.demand.severity === severity)?.demand.basis[0]?.ground ?? 'practice',
    subject: tellSubject(subject),
    say: { key: 'one-more', params },
    message: question(subject),
    because: 'What is not listed and not counted could be there and be wrong.',
    remedy: `List it, or say how many there are: ${countText(subject)}.`,
    demands: [],
    evidence: [],
    missing: [missingCount(subject)],
    rules: [...new Set(verdicts.map((verdict) => verdict.rule.id))].sort(),
  }
}

function rankOf(verdict: JudgedVerdict): number {
  return verdict.severity === undefined ? severities.length : severities.indexOf(verdict.severity)
}

function question({ kind, owner }: Thing): string {
  const article = /^[aeiou]/i.test(kind.spoken) ? 'an' : 'a'
  return owner === undefined
    ? `Is there ${article} ${kind.spoken} that is not listed?`
    : `Has ${owner} ${article} ${kind.spoken} that is not listed?`
}

function countText({ kind, owner }: Thing): string {
  if (owner !== undefined) return `complete: ... in the list of ${owner}`
  return `none: [${kind.name}] or complete: { ${kind.name}: ... }`
}

export function missingCount({ kind, owner }: Thing): { readonly subject: string; readonly fact: string } {
  return { subject: owner ?? kind.name, fact: owner === undefined ? 'count' : `count of ${kind.name}` }
}
