import { resolveFact, type Catalogue } from '../../facts/index.js'
import { isMap, problemList, readEntry, textOf, type Problem, type ProblemList, type Steps } from '../../model/index.js'
import { severities, type Severity } from '../../rulebook/index.js'
import { readExamples, type Example } from '../examples/index.js'

/** What is wrong with the examples of a rule: facts that it may not mention, values that cannot be read, verdicts that none shows. */
export function lintExamples(rule: unknown, catalogue: Catalogue): readonly Problem[] {
  const problems = problemList()
  if (!isMap(rule)) return []
  const examples = readExamples(rule, problems)
  lintFacts(rule, catalogue, problems)
  lintCoverage(rule, examples, problems)
  return problems.found
}

function lintFacts(rule: Readonly<Record<string, unknown>>, catalogue: Catalogue, problems: ProblemList): void {
  const subject = textOf(rule.subject) ?? ''
  if (!catalogue.model.kindsIn.has(subject)) return
  lintMap(rule.given, ['given'], { subject, catalogue, problems })
  const written: readonly unknown[] = Array.isArray(rule.examples) ? rule.examples : []
  for (const [index, example] of written.entries())
    if (isMap(example)) lintMap(example.facts, ['examples', index, 'facts'], { subject, catalogue, problems })
}

interface Linting {
  readonly subject: string
  readonly catalogue: Catalogue
  readonly problems: ProblemList
}

function lintMap(facts: unknown, steps: Steps, { subject, catalogue, problems }: Linting): void {
  for (const [path, value] of Object.entries(isMap(facts) ? facts : {})) {
    const found = resolveFact(catalogue, subject, path)
    if (found.ok) readEntry(found.fact.type, value, { steps: [...steps, path], problems, standing: 'stated' })
    else
      problems.add('unknown-fact', [...steps, path], found.message, {
        received: path,
        ...(found.nearest === undefined ? {} : { nearest: found.nearest }),
      })
  }
}

/** One example for each verdict that the rule can give. A rule without demands gives none until a town adds one. */
function lintCoverage(
  rule: Readonly<Record<string, unknown>>,
  examples: readonly Example[],
  problems: ProblemList,
): void {
  const demands = (Array.isArray(rule.demands) ? rule.demands : []).filter(isMap)
  if (demands.length === 0) return
  const lacking = wantedVerdicts(rule, demands).filter((wanted) => !examples.some((example) => shows(example, wanted)))
  for (const wanted of lacking) {
    const expect = wanted.verdict === 'fail' ? `{ fail: ${wanted.severity} }` : wanted.verdict
    problems.add('missing-example', ['examples'], `No example comes to ${expect}; the rule can.`)
  }
}

type Wanted =
  | { readonly verdict: 'pass' | 'undecided' | 'not-applicable' }
  | { readonly verdict: 'fail'; readonly severity: Severity }

function wantedVerdicts(
  rule: Readonly<Record<string, unknown>>,
  demands: readonly Readonly<Record<string, unknown>>[],
): readonly Wanted[] {
  const used = severities.filter((severity) => demands.some((demand) => demand.severity === severity))
  const fails = used.map((severity): Wanted => ({ verdict: 'fail', severity }))
  const conditional = rule.when !== undefined || demands.every((demand) => demand.when !== undefined)
  return [
    { verdict: 'pass' },
    ...fails,
    { verdict: 'undecided' },
    ...(conditional ? [{ verdict: 'not-applicable' } as const] : []),
  ]
}

function shows({ expect }: Example, wanted: Wanted): boolean {
  if (expect.verdict !== 'fail' || wanted.verdict !== 'fail') return expect.verdict === wanted.verdict
  return expect.severity === wanted.severity
}
