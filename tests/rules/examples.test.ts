import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  judgeGiven,
  neighborsOf,
  printExpected,
  readExamples,
  runExamples,
  type ExampleVerdict,
} from '../../src/authoring/index.js'
import { isMap, problemList } from '../../src/model/index.js'
import { fragments, rulebookOf, written, writtenRules } from './base-rules.js'
import { evaluate } from './evaluator.js'

const base = rulebookOf(writtenRules)

function told(came: ExampleVerdict): string {
  return came.ok ? printExpected(came.verdict) : came.error
}

/** A rule without demands of its own is there for towns to adopt; it can only not apply. */
function adopted(data: unknown): boolean {
  return isMap(data) && Array.isArray(data.demands) && data.demands.length === 0
}

it('can read everything that is written', () => {
  expect(written.problems).toEqual([])
  expect(writtenRules.length).toBeGreaterThan(20)
})

describe.each(writtenRules)('$id', (rule) => {
  it('comes to what its examples say', () => {
    const runs = runExamples(rule, base, fragments)
    expect(runs.length).toBeGreaterThan(adopted(rule.data) ? 0 : 2)
    expect(runs.filter((run) => !run.agrees).map((run) => run.message)).toEqual([])
  })

  it('is read the same from the book', () => {
    const examples = readExamples(rule.data, problemList()).flatMap((example) =>
      example.type === 'facts' ? [example] : [],
    )
    expect(examples.map(({ name, facts }) => [name, printExpected(evaluate(rule.data, facts))])).toEqual(
      examples.map(({ name, expect: expected }) => [name, printExpected(expected)]),
    )
  })

  it('comes to what the book says beside every limit and without every given fact', () => {
    const compiled = base.rulesById.get(rule.id)!
    const neighbors = neighborsOf(rule, base)
    expect(neighbors.length).toBeGreaterThan(adopted(rule.data) ? -1 : 2)
    const ours = neighbors.map(({ name, facts }) => `${name}: ${told(judgeGiven(base, compiled, facts))}`)
    expect(ours).toEqual(neighbors.map(({ name, facts }) => `${name}: ${printExpected(evaluate(rule.data, facts))}`))
  })
})

describe.each(writtenRules)('$id with anything known and anything not', (rule) => {
  it('comes to what the book says', () => {
    const compiled = base.rulesById.get(rule.id)!
    const neighbors = neighborsOf(rule, base)
    const paths = [...new Set(neighbors.flatMap(({ facts }) => Object.keys(facts)))]
    const values = paths.map(
      (path) =>
        [
          path,
          fc.constantFrom(...new Set(['unknown', ...neighbors.map(({ facts }) => facts[path] ?? 'unknown')])),
        ] as const,
    )
    fc.assert(
      fc.property(fc.record(Object.fromEntries(values)), (facts) => {
        expect(told(judgeGiven(base, compiled, facts))).toBe(printExpected(evaluate(rule.data, facts)))
      }),
      { numRuns: 200, seed: 20250903 },
    )
  })
})
