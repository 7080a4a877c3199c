import { describe, expect, it } from 'vitest'
import { judgeGiven, neighborsOf, printExpected, runExamples } from '../../src/authoring/index.js'
import { tryOpenRulebook, type Rulebook } from '../../src/rulebook/index.js'
import { foundation, fragments, rulebookOf, writtenRules } from './base-rules.js'
import { evaluate } from './evaluator.js'
import { coarseMutants, fineMutants, type Mutant } from './mutations.js'

const base = rulebookOf(writtenRules)

// A rule without demands of its own can be read in no wrong way.
const demanding = writtenRules.filter(({ id }) => (base.rulesById.get(id)?.demands.length ?? 0) > 0)

/** The rulebook with the wrong reading; nothing where the loader refuses it. */
function openMutant(id: string, { data }: Mutant): Rulebook | undefined {
  const opened = tryOpenRulebook({ ruleSets: [{ ...foundation, rules: { [id]: data } }] })
  return opened.ok ? opened.rulebook : undefined
}

/** Wrong readings that the examples written by hand let pass. */
function survivors(id: string, data: unknown, mutants: readonly Mutant[]): readonly string[] {
  const unnoticed = mutants.filter((mutant) => {
    const opened = openMutant(id, mutant)
    return opened !== undefined && runExamples({ id, data }, opened, fragments).every((run) => run.agrees)
  })
  return unnoticed.map(({ name }) => name)
}

/** Wrong readings that the cases beside the examples let pass as well. */
function survivorsBeside(id: string, data: unknown, mutants: readonly Mutant[]): readonly string[] {
  const cases = neighborsOf({ id, data }, base).map(({ facts }) => ({
    facts,
    right: printExpected(evaluate(data, facts)),
  }))
  const unnoticed = mutants.filter((mutant) => {
    const rule = openMutant(id, mutant)
    const read = rule?.rulesById.get(id)
    return (
      rule !== undefined &&
      read !== undefined &&
      cases.every(({ facts, right }) => {
        const came = judgeGiven(rule, read, facts)
        return came.ok && printExpected(came.verdict) === right
      })
    )
  })
  return unnoticed.map(({ name }) => name)
}

describe.each(demanding)('a wrong reading of $id', ({ id, data }) => {
  it('fails an example', () => {
    expect(coarseMutants(data).length).toBeGreaterThan(3)
    expect(survivors(id, data, coarseMutants(data))).toEqual([])
  })

  it('fails beside an example where it is off only at the limit', () => {
    expect(survivorsBeside(id, data, fineMutants(data))).toEqual([])
  })
})
