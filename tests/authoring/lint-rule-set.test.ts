import { describe, expect, it } from 'vitest'
import { lintRuleSet, ruleIdOf } from '../../src/authoring/index.js'
import { printProblem, type Problem } from '../../src/model/index.js'
import { foundation, written } from '../rules/base-rules.js'
import { faultyRule, faultyTown } from './faulty-files.js'
import { fileOf, positionsOf } from './files.js'

const told = ({ file, line, code, nearest }: Problem): string =>
  `${file ?? ''}:${line ?? 0} ${code}${nearest === undefined ? '' : ` -> ${nearest}`}`

describe('the linter', () => {
  it('finds nothing wrong in our own rules and towns', () => {
    expect(lintRuleSet({ ...written, plugins: [foundation] }).map(printProblem)).toEqual([])
  })

  it('tells every mistake of a rule and of a town file in one run, with place and nearest right name', () => {
    const positions = new Map([...written.positions, ...positionsOf([faultyRule, faultyTown])])
    const found = lintRuleSet({
      ...written,
      rules: [...written.rules, faultyRule],
      overlays: [...written.overlays, faultyTown],
      plugins: [foundation],
      positions,
    })
    expect(found.map(told)).toEqual([
      'rules/vent/garage-height.yaml:4 unknown-fact -> ventTermination.serves',
      'rules/vent/garage-height.yaml:5 unknown-operator -> atLeast',
      'rules/vent/garage-height.yaml:8 severity-above-ground -> should',
      'rules/vent/garage-height.yaml:9 wrong-unit',
      'rules/vent/garage-height.yaml:11 duplicate-id',
      'rules/vent/garage-height.yaml:14 unknown-source -> practice',
      'rules/vent/garage-height.yaml:15 unknown-fact -> ventTermination.heightAboveGrade',
      'rules/vent/garage-height.yaml:17 unknown-key -> remedy',
      'rules/vent/garage-height.yaml:18 not-a-choice -> exhaust',
      'rules/vent/garage-height.yaml:20 missing-example',
      'rules/vent/garage-height.yaml:20 missing-example',
      'rules/vent/garage-height.yaml:20 missing-example',
      'rules/vent/garage-height.yaml:20 missing-example',
      'rules/vent/garage-height.yaml:21 unreadable-quantity -> 5 in',
      'rules/vent/garage-height.yaml:21 not-a-choice -> should',
      'rules/vent/garage-height.yaml:22 unknown-fact -> ventTermination.heightAboveGrade',
      'rules/vent/garage-height.yaml:22 bad-expectation -> undecided',
      'shared/overlays/mistakes.yaml:6 no-verb -> demand',
      'shared/overlays/mistakes.yaml:7 unknown-rule -> vent/termination-height',
      'shared/overlays/mistakes.yaml:8 wrong-unit',
      'shared/overlays/mistakes.yaml:9 locked-demand',
      'shared/overlays/mistakes.yaml:11 never-applies',
      'shared/overlays/mistakes.yaml:12 no-citation -> clause',
      'shared/overlays/mistakes.yaml:13 severity-above-ground -> advice',
      'shared/overlays/mistakes.yaml:18 missing-example',
      'shared/overlays/mistakes.yaml:19 unknown-fact -> fillValve.position',
    ])
  })

  it('shows an unknown key and a misspelt fact at the key, a wrong value at the value', () => {
    const found = lintRuleSet({
      ...written,
      rules: [...written.rules, faultyRule],
      plugins: [foundation],
      positions: positionsOf([faultyRule]),
    })
    const columnOf = (code: string): number | undefined => found.find((problem) => problem.code === code)?.column
    expect([columnOf('unknown-key'), columnOf('unknown-fact'), columnOf('unknown-operator')]).toEqual([1, 9, 62])
  })

  it('works without places, and then names pointers', () => {
    const [first] = lintRuleSet({ ...written, rules: [...written.rules, faultyRule], plugins: [foundation] })
    expect(first).toMatchObject({ file: 'rules/vent/garage-height.yaml' })
    expect(first?.line).toBeUndefined()
    expect(first?.pointer).not.toBe('')
  })

  it('does not blame a town for a rule that cannot be read', () => {
    const rules = written.rules.map((rule) =>
      ruleIdOf(rule.file) === 'vent/termination-height'
        ? { ...rule, data: { ...Object(rule.data), subject: 'ventTermnation' } as unknown }
        : rule,
    )
    const found = lintRuleSet({ ...written, rules, plugins: [foundation] })
    expect(found.map(({ file, code, nearest }) => [file, code, nearest])).toEqual([
      ['rules/vent/termination-height.yaml', 'unknown-kind', 'ventTermination'],
    ])
  })

  it('refuses an id that is taken, given up or no id', () => {
    const [rule] = written.rules
    const data = rule?.data
    const twice = { file: 'elsewhere/rules/relief/present.yml', data }
    const retired = fileOf('rules/retired.yaml', '[relief/way]')
    const found = lintRuleSet({
      ...written,
      rules: [...written.rules, twice, { file: 'notes.yaml', data }],
      retired,
      plugins: [foundation],
    })
    expect(found.map(({ code, file }) => [code, file])).toEqual(
      expect.arrayContaining([
        ['duplicate-id', 'elsewhere/rules/relief/present.yml'],
        ['retired-id', 'rules/relief/way.yaml'],
        ['bad-place', 'notes.yaml'],
      ]),
    )
  })

  it('reads the bibliography as closely as the rules', () => {
    const sources = fileOf(
      'shared/sources.yaml',
      'irc: { title: A code, family: residental }\nnec: { titel: Another, family: electrical }',
    )
    const found = lintRuleSet({ rules: [], sources, plugins: [foundation], positions: positionsOf([sources]) })
    expect(found.map(told)).toEqual([
      'shared/sources.yaml:1 not-a-choice -> residential',
      'shared/sources.yaml:2 missing-key',
      'shared/sources.yaml:2 unknown-key -> title',
    ])
  })

  it('asks no examples of a rule that only towns fill', () => {
    const adopted = fileOf(
      'rules/papers/witness.yaml',
      'title: The test has a witness\nsubject: test\ndemands: []\nsay: { fail: "{id} has no witness." }\nbecause: Somebody has to see it.',
    )
    expect(lintRuleSet({ ...written, rules: [...written.rules, adopted], plugins: [foundation] })).toEqual([])
  })
})
