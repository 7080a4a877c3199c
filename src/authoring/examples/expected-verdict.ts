import { isMap, nearestIn, textOf, type ProblemList, type Steps } from '../../model/index.js'
import type { Verdict } from '../../judging/index.js'
import { severities, type Severity } from '../../rulebook/index.js'

/** What an example says that a rule comes to. */
export type ExpectedVerdict =
  | { readonly verdict: 'pass' | 'undecided' | 'not-applicable' }
  | { readonly verdict: 'fail'; readonly severity: Severity; readonly couldBe?: Severity }

const plainVerdicts = ['pass', 'undecided', 'not-applicable'] as const

/** Reads `pass`, `undecided`, `not-applicable`, `{ fail: should }` or `{ fail: should, couldBe: must }`. */
export function readExpected(raw: unknown, steps: Steps, problems: ProblemList): ExpectedVerdict | undefined {
  if (isMap(raw)) return readFail(raw, steps, problems)
  const word = textOf(raw)
  const verdict = plainVerdicts.find((known) => known === word)
  if (verdict !== undefined) return { verdict }
  const message = word === undefined ? 'An example says what to expect.' : `"${word}" is no verdict.`
  const near = word === 'fail' ? { nearest: '{ fail: must }' } : nearestIn(word ?? '', plainVerdicts)
  return problems.add('bad-expectation', steps, message, {
    expected: [...plainVerdicts, '{ fail: severity }'].join(' | '),
    ...near,
  })
}

const failKeys = ['fail', 'couldBe'] as const

function readFail(
  raw: Readonly<Record<string, unknown>>,
  steps: Steps,
  problems: ProblemList,
): ExpectedVerdict | undefined {
  for (const key of Object.keys(raw)) {
    if (!failKeys.some((known) => known === key))
      problems.add('unknown-key', [...steps, key], `An expectation has no "${key}".`, nearestIn(key, failKeys))
  }
  const severity = readSeverity(raw.fail, [...steps, 'fail'], problems)
  const couldBe = raw.couldBe === undefined ? undefined : readSeverity(raw.couldBe, [...steps, 'couldBe'], problems)
  return severity && { verdict: 'fail', severity, ...(couldBe === undefined ? {} : { couldBe }) }
}

function readSeverity(raw: unknown, steps: Steps, problems: ProblemList): Severity | undefined {
  const word = textOf(raw) ?? ''
  const severity = severities.find((known) => known === word)
  return (
    severity ??
    problems.add('not-a-choice', steps, `"${word}" is no severity.`, {
      expected: severities.join(' | '),
      ...nearestIn(word, severities),
    })
  )
}

/** A verdict in the terms of an example. */
export function expectedOf(verdict: Verdict): ExpectedVerdict | undefined {
  if (verdict.type === 'broken') return undefined
  if (verdict.verdict !== 'fail') return { verdict: verdict.verdict }
  if (verdict.severity === undefined) return undefined
  return {
    verdict: 'fail',
    severity: verdict.severity,
    ...(verdict.couldBe === undefined ? {} : { couldBe: verdict.couldBe }),
  }
}

/** The same in a few words: `fail: should, could be must`. */
export function printExpected(expected: ExpectedVerdict): string {
  if (expected.verdict !== 'fail') return expected.verdict
  return `fail: ${expected.severity}${expected.couldBe === undefined ? '' : `, could be ${expected.couldBe}`}`
}
