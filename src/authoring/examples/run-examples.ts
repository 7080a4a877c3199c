import { problemList } from '../../model/index.js'
import type { Rulebook } from '../../rulebook/index.js'
import { readExamples, type Example } from './example.js'
import { printExpected } from './expected-verdict.js'
import { judgeExample, type ExampleVerdict, type Fragments } from './judge-example.js'

/** A rule as written, with its id. */
export interface WrittenRule {
  readonly id: string
  readonly data: unknown
}

/** An example that was run. */
export interface ExampleRun {
  readonly example: Example
  readonly came: ExampleVerdict
  readonly agrees: boolean
  /** One sentence for a reader. */
  readonly message: string
}

/**
 * Judges every example of a rule and tells which come out as they say.
 *
 * @param fragments installations by the name that `of:` gives
 * @example
 * const runs = runExamples({ id: 'relief/present', data }, rulebook)
 * runs.filter((run) => !run.agrees).map((run) => run.message) // []
 */
export function runExamples(
  { id, data }: WrittenRule,
  rulebook: Rulebook,
  fragments: Fragments = {},
): readonly ExampleRun[] {
  const rule = rulebook.rulesById.get(id)
  if (rule === undefined) return []
  return readExamples(data, problemList()).map((example) => {
    const came = judgeExample(rulebook, rule, example, fragments)
    const expected = printExpected(example.expect)
    const agrees = came.ok && printExpected(came.verdict) === expected
    const found = came.ok
      ? printExpected(came.verdict)
      : [came.error, ...(came.problems ?? []).map((problem) => problem.message)].join(' ')
    return {
      example,
      came,
      agrees,
      message: `${id}, "${example.name}": ${agrees ? expected : `expected ${expected}, came to ${found}`}`,
    }
  })
}
