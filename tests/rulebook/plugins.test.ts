import { describe, expect, it } from 'vitest'
import { base } from '../../src/base.js'
import { prepare } from '../../src/engine/prepare.js'
import { writeReport, type Report } from '../../src/findings/index.js'
import { judge } from '../../src/judging/index.js'
import { fact, known, unknown, word } from '../../src/facts/index.js'
import { indirectTank, kind, quantity, reference } from '../../src/model/index.js'
import { defineCheck, definePlugin, openRulebook, tryOpenRulebook, type Rulebook } from '../../src/rulebook/index.js'

const label = kind('label', {
  spoken: 'label',
  place: 'papers',
  fields: { printedOn: quantity('date'), tank: reference('indirectTank', { countedAs: 'labels' }) },
})
const labelHeight = fact('labelHeight', { of: indirectTank, type: quantity('length'), read: () => known(1) })
const labelReadable = defineCheck('labelReadable', {
  of: indirectTank,
  answers: ['yes', 'no'],
  answerable: true,
  judge: ({ ask, listed }) => {
    const { things, more } = listed(label)
    const printed = things.map((thing) => ask('printedOn', thing))
    if (printed.some((answer) => answer.state === 'number'))
      return word('yes', { witness: things.map((thing) => thing.id) })
    return more > 0 ? unknown({ missing: [{ subject: label.name, fact: 'count' }] }) : word('no')
  },
})

const words = { title: 'A tank has a label', say: { fail: '{id} has no label.' }, because: 'People should know.' }
const basis = [{ source: 'label-book', ground: 'listing', known: 'read' }]
const labels = definePlugin({
  name: 'tank-labels',
  version: '1.0.0',
  contract: 1,
  kinds: [label],
  facts: [labelHeight],
  checks: [labelReadable],
  rules: {
    'labels/readable': {
      ...words,
      subject: 'indirectTank',
      demands: [
        { id: 'readable', severity: 'must', require: { 'indirectTank.tank-labels/labelReadable': 'yes' }, basis },
      ],
    },
  },
  sources: { 'label-book': { title: 'The book of labels', family: 'none' } },
})

const rulebook = openRulebook({ ruleSets: [base], plugins: [labels] })
function check(components: readonly unknown[], book: Rulebook = rulebook): Report {
  const prepared = prepare({ installation: 1, complete: { all: components.length }, components }, book, {})
  return writeReport({ ...prepared, verdicts: judge(book, prepared.facts) })
}

describe('a plugin', () => {
  it('adds a kind, a fact, a check and a rule under its own name', () => {
    expect(rulebook.rulesById.has('tank-labels/labels/readable')).toBe(true)
    expect(rulebook.model.kinds.has('tank-labels/label')).toBe(true)
    expect(rulebook.ruleSets.map(({ name }) => name)).toEqual(['base', 'tank-labels'])
  })

  it('is judged like ours: by what is listed, by what is stated, and by the difference', () => {
    const key = 'tank-labels/labels/readable/T1'
    const findings = (components: readonly unknown[]) =>
      check(components).findings.filter((finding) => finding.key === key)
    expect(findings([{ id: 'T1', kind: 'indirectTank' }])).toMatchObject([
      { verdict: 'fail', severity: 'must', ground: 'listing' },
    ])
    expect(
      findings([
        { id: 'T1', kind: 'indirectTank' },
        { id: 'LB1', kind: 'tank-labels/label', printedOn: '2024-05-01', tank: 'T1' },
      ]),
    ).toEqual([])
    const stated = check([{ id: 'T1', kind: 'indirectTank', 'tank-labels/labelReadable': 'yes' }])
    expect(stated.contradictions).toMatchObject([{ code: 'answer-against-trace', subject: 'T1' }])
  })

  it('counts its references at the thing they refer to', () => {
    const counting = definePlugin({
      ...labels,
      rules: {
        'labels/one': {
          ...words,
          subject: 'indirectTank',
          demands: [{ id: 'one', severity: 'must', require: { 'indirectTank.labels': { atLeast: '1' } }, basis }],
        },
      },
    })
    const report = check([{ id: 'T1', kind: 'indirectTank' }], openRulebook({ ruleSets: [base], plugins: [counting] }))
    expect(report.findings.map((finding) => finding.key)).toContain('tank-labels/labels/one/T1')
  })

  it('cannot take a name that is taken', () => {
    const twice = tryOpenRulebook({ ruleSets: [base], plugins: [labels, labels] })
    expect(twice.ok ? [] : twice.problems.map((problem) => problem.code)).toContain('duplicate-id')
  })
})
