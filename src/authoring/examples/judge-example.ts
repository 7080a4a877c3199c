import { gatherFacts } from '../../facts/index.js'
import { judgeRule, subjectsOf, type Verdict } from '../../judging/index.js'
import { applyEdits, tryReadInstallation, type Problem } from '../../model/index.js'
import { isWorse, type Rule, type Rulebook } from '../../rulebook/index.js'
import { exampleFacts } from './example-facts.js'
import { expectedOf, type ExpectedVerdict } from './expected-verdict.js'
import type { Example, FragmentExample } from './example.js'

/** What a rule comes to in an example, or why that cannot be told. */
export type ExampleVerdict =
  | { readonly ok: true; readonly verdict: ExpectedVerdict }
  | { readonly ok: false; readonly error: string; readonly problems?: readonly Problem[] }

/** Small installations by name, as `of:` gives it. */
export type Fragments = Readonly<Record<string, unknown>>

/** Judges a rule in one example, the way it is judged in a house. */
export function judgeExample(
  rulebook: Rulebook,
  rule: Rule,
  example: Example,
  fragments: Fragments = {},
): ExampleVerdict {
  if (example.type === 'fragment') return judgeFragment(rulebook, rule, example, fragments)
  return judgeGiven(rulebook, rule, example.facts)
}

/** Judges a rule on given facts alone. */
export function judgeGiven(rulebook: Rulebook, rule: Rule, given: Readonly<Record<string, unknown>>): ExampleVerdict {
  const { facts, subject } = exampleFacts(rulebook.facts, rule, given)
  return told(judgeRule(facts, rule, subject))
}

function judgeFragment(rulebook: Rulebook, rule: Rule, example: FragmentExample, fragments: Fragments): ExampleVerdict {
  const fragment = Object.hasOwn(fragments, example.of) ? fragments[example.of] : undefined
  if (fragment === undefined) return { ok: false, error: `There is no installation "${example.of}".` }
  const edited = applyEdits(fragment, example.edits, rulebook.model)
  if (!edited.ok) return { ok: false, error: 'An edit cannot be made.', problems: edited.problems }
  const read = tryReadInstallation(edited.document, rulebook.model)
  if (!read.ok) return { ok: false, error: 'The edited installation cannot be read.', problems: read.problems }
  const facts = gatherFacts(read.installation, rulebook.facts)
  const asked = subjectsOf(rule, facts).filter(({ subject }) =>
    example.subject === undefined ? subject.unlisted !== true : subject.id === example.subject,
  )
  return worst(
    asked.map(({ subject }) => judgeRule(facts, rule, subject)),
    rule,
  )
}

function worst(verdicts: readonly Verdict[], rule: Rule): ExampleVerdict {
  const all = verdicts.map(told)
  const [first = { ok: false, error: `Nothing is listed that ${rule.id} could be asked of.` } as const, ...others] = all
  return others.reduce<ExampleVerdict>(
    (sofar, next) => (weight(next) < weight(sofar) || isMilderFail(sofar, next) ? next : sofar),
    first,
  )
}

const order = ['fail', 'undecided', 'pass', 'not-applicable'] as const

function weight(told: ExampleVerdict): number {
  return told.ok ? order.indexOf(told.verdict.verdict) : -1
}

function isMilderFail(a: ExampleVerdict, b: ExampleVerdict): boolean {
  return (
    a.ok &&
    b.ok &&
    a.verdict.verdict === 'fail' &&
    b.verdict.verdict === 'fail' &&
    isWorse(b.verdict.severity, a.verdict.severity)
  )
}

function told(verdict: Verdict): ExampleVerdict {
  if (verdict.type === 'broken') return { ok: false, error: verdict.error }
  const expected = expectedOf(verdict)
  return expected === undefined
    ? { ok: false, error: 'The rule fails without a severity.' }
    : { ok: true, verdict: expected }
}
