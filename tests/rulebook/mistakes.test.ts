import { describe, expect, it } from 'vitest'
import { tryOpenRulebook } from '../../src/rulebook/index.js'
import { basis, demand, habit, parts, rule, town } from '../judging/small-rulebook.js'

type Rules = Readonly<Record<string, unknown>>

function told(rules: Rules, overlays: readonly Readonly<Record<string, unknown>>[] = []): readonly string[] {
  const read = tryOpenRulebook(parts(rules, overlays))
  if (read.ok) return read.rulebook.warnings.map((problem) => `warning ${problem.code} ${problem.pointer}`)
  return read.problems.map(
    ({ code, pointer, nearest }) => `${code} ${pointer}${nearest === undefined ? '' : ` -> ${nearest}`}`,
  )
}

const requires = (require: unknown): Rules => ({ 'tank/x': rule({ demands: [demand('a', 'must', require)] }) })
const measures = (fact: string, operator: string, value: unknown): Rules => ({
  'tank/x': rule({ measure: { fact, operator }, demands: [{ id: 'a', severity: 'must', value, basis }] }),
})

/** One mistake a row. */
const ruleMistakes: readonly (readonly [string, Rules, string])[] = [
  [
    'a fact that is not one',
    requires({ 'tank.colour': 'red' }),
    'unknown-fact /demands/0/require/tank.colour -> tank.color',
  ],
  [
    'a subject that may not be mentioned',
    requires({ 'space.damp': 'yes' }),
    'unknown-fact /demands/0/require/space.damp',
  ],
  ['two hops', requires({ 'tank.room.tanks.color': 'red' }), 'unknown-fact /demands/0/require/tank.room.tanks.color'],
  ['a choice that is not one', requires({ 'tank.color': 'rde' }), 'not-a-choice /demands/0/require/tank.color -> red'],
  [
    'an operator that is not one',
    requires({ 'tank.pressure': { atleast: '3 psi' } }),
    'unknown-operator /demands/0/require/tank.pressure/atleast -> atLeast',
  ],
  [
    'an operator that does not fit',
    requires({ 'tank.color': { atLeast: 'red' } }),
    'wrong-operator /demands/0/require/tank.color/atLeast',
  ],
  [
    'a wrong unit',
    requires({ 'tank.pressure': { atLeast: '3 ft' } }),
    'wrong-unit /demands/0/require/tank.pressure/atLeast',
  ],
  [
    'no unit',
    requires({ 'tank.pressure': { atLeast: '3' } }),
    'wrong-unit /demands/0/require/tank.pressure/atLeast -> 3 psi',
  ],
  [
    'a value of a wrong dimension',
    requires({ 'tank.pressure': { atLeast: { fact: 'site.altitude' } } }),
    'wrong-dimension /demands/0/require/tank.pressure/atLeast/fact',
  ],
  [
    'a sum of wrong dimension',
    requires({ 'tank.pressure': { atLeast: { sum: ['3 psi', '2 in'] } } }),
    'wrong-unit /demands/0/require/tank.pressure/atLeast/sum/1',
  ],
  [
    'an unknown shape of value',
    requires({ 'tank.pressure': { atLeast: { plus: ['3 psi'] } } }),
    'unknown-key /demands/0/require/tank.pressure/atLeast/plus',
  ],
  [
    'a month as a day',
    requires({ 'jurisdiction.applicationDate': { atLeast: '2024-07' } }),
    'not-one-day /demands/0/require/jurisdiction.applicationDate/atLeast',
  ],
  [
    'one value for a list fact',
    requires({ 'tank.liners': 'glass' }),
    'list-fact /demands/0/require/tank.liners -> includes',
  ],
  [
    'a list for a list fact',
    requires({ 'tank.liners': ['glass'] }),
    'list-fact /demands/0/require/tank.liners -> includes',
  ],
  ['two keys in one map', requires({ 'tank.color': 'red', 'tank.lined': 'yes' }), 'two-keys /demands/0/require -> all'],
  [
    'two operators in one comparison',
    requires({ 'tank.pressure': { atLeast: '3 psi', atMost: '9 psi' } }),
    'two-keys /demands/0/require/tank.pressure -> all',
  ],
  [
    'two groups in one node',
    requires({ all: [{ 'tank.color': 'red' }], any: [{ 'tank.color': 'red' }] }),
    'two-keys /demands/0/require',
  ],
  ['an empty group', requires({ all: [] }), 'bad-condition /demands/0/require/all'],
  ['an empty condition', requires({}), 'bad-condition /demands/0/require'],
  [
    'a path',
    requires({ fact: 'tank.color', operator: 'is', value: 'red', path: '$.x' }),
    'refused-key /demands/0/require/path',
  ],
  [
    'params',
    requires({ fact: 'tank.color', operator: 'is', value: 'red', params: {} }),
    'refused-key /demands/0/require/params',
  ],
  [
    'a priority',
    requires({ all: [{ 'tank.color': 'red' }], priority: '3' }),
    'refused-key /demands/0/require/priority',
  ],
  [
    'between with one value',
    requires({ 'tank.pressure': { between: ['3 psi'] } }),
    'bad-value /demands/0/require/tank.pressure/between',
  ],
  [
    'a list where one value goes',
    requires({ 'tank.pressure': { atLeast: ['3 psi'] } }),
    'bad-value /demands/0/require/tank.pressure/atLeast -> oneOf',
  ],
  [
    'one value where a list goes',
    requires({ 'tank.color': { oneOf: 'red' } }),
    'bad-value /demands/0/require/tank.color/oneOf -> [red]',
  ],
  [
    'a value without measure',
    { 'tank/x': rule({ demands: [{ id: 'a', severity: 'must', value: '3 psi', basis }] }) },
    'no-measure /demands/0/value -> require',
  ],
  [
    'a demand without requirement',
    { 'tank/x': rule({ demands: [{ id: 'a', severity: 'must', basis }] }) },
    'missing-key /demands/0 -> require',
  ],
  [
    'both a value and a requirement',
    {
      'tank/x': rule({
        measure: { fact: 'tank.pressure', operator: 'atLeast' },
        demands: [{ id: 'a', severity: 'must', value: '3 psi', require: { 'tank.color': 'red' }, basis }],
      }),
    },
    'two-requirements /demands/0',
  ],
  [
    'a measure that is not a fact',
    measures('tank.presure', 'atLeast', '3 psi'),
    'unknown-fact /measure/fact -> tank.pressure',
  ],
  [
    'a must on habit',
    { 'tank/x': rule({ demands: [{ id: 'a', severity: 'must', require: { 'tank.color': 'red' }, basis: habit }] }) },
    'severity-above-ground /demands/0/severity -> should',
  ],
  [
    'a must on recalled text',
    {
      'tank/x': rule({
        demands: [
          {
            id: 'a',
            severity: 'must',
            require: { 'tank.color': 'red' },
            basis: [{ source: 'book', ground: 'code', known: 'recalled' }],
          },
        ],
      }),
    },
    'severity-above-ground /demands/0/severity -> should',
  ],
  [
    'a source that is not listed',
    {
      'tank/x': rule({
        demands: [
          {
            id: 'a',
            severity: 'should',
            require: { 'tank.color': 'red' },
            basis: [{ source: 'bok', ground: 'code', known: 'read' }],
          },
        ],
      }),
    },
    'unknown-source /demands/0/basis/0/source -> book',
  ],
  ['a key that is not one', { 'tank/x': rule({ demands: [], remdy: 'words' }) }, 'unknown-key /remdy -> remedy'],
  [
    'a key of a demand that is not one',
    { 'tank/x': rule({ demands: [demand('a', 'must', { 'tank.color': 'red' }, { lockd: 'yes' })] }) },
    'unknown-key /demands/0/lockd -> locked',
  ],
  [
    'a severity that is not one',
    { 'tank/x': rule({ demands: [demand('a', 'mustt', { 'tank.color': 'red' })] }) },
    'not-a-choice /demands/0/severity -> must',
  ],
  ['a phase that is not one', { 'tank/x': rule({ from: 'finale', demands: [] }) }, 'not-a-choice /from -> final'],
  ['a subject that is not one', { 'tank/x': rule({ subject: 'tnk', demands: [] }) }, 'unknown-kind /subject -> tank'],
  [
    'two demands of one id',
    {
      'tank/x': rule({
        demands: [demand('a', 'must', { 'tank.color': 'red' }), demand('a', 'must', { 'tank.color': 'red' })],
      }),
    },
    'duplicate-id /demands/1/id',
  ],
  [
    'a placeholder that is not a fact',
    { 'tank/x': rule({ demands: [], say: { fail: '{id} is {tank.colour}.' } }) },
    'unknown-fact /say/fail -> tank.color',
  ],
  [
    'missing words',
    {
      'tank/x': { title: 'x', subject: 'tank', demands: [demand('a', 'must', { 'tank.color': 'red' })], because: 'y' },
    },
    'missing-key /say',
  ],
  [
    'a rule that keeps towns out',
    {
      'tank/x': rule({
        when: { 'site.altitude': { atLeast: '3 ft' } },
        demands: [demand('a', 'must', { 'tank.color': 'red' })],
      }),
    },
    'warning place-in-when /when',
  ],
]

const good = {
  'tank/x': rule({
    measure: { fact: 'tank.pressure', operator: 'atMost' },
    demands: [
      { id: 'limit', severity: 'must', value: '30 psi', basis },
      demand('safe', 'stop', { 'tank.color': 'red' }, { locked: 'true' }),
    ],
  }),
}
const change = (words: Readonly<Record<string, unknown>>) => [town('elm', [words])]
const asks = (words: Readonly<Record<string, unknown>>) =>
  change({ demand: 'tank/x', severity: 'must', value: '20 psi', nature: 'amendment', clause: '1', ...words })

const townMistakes: readonly (readonly [string, readonly Readonly<Record<string, unknown>>[], string])[] = [
  ['a verb that is not one', change({ demnad: 'tank/x' }), 'no-verb /changes/0 -> demand'],
  ['two verbs', change({ demand: 'tank/x', exempt: 'tank/x' }), 'no-verb /changes/0 -> demand'],
  ['a rule that is not one', asks({ demand: 'tank/y' }), 'unknown-rule /changes/0/demand -> tank/x'],
  ['a wrong unit', asks({ value: '20 ft' }), 'wrong-unit /changes/0/value'],
  ['no citation', asks({ clause: undefined }), 'no-citation /changes/0 -> clause'],
  ['a key that is not one', asks({ efective: {} }), 'unknown-key /changes/0/efective -> effective'],
  [
    'dates without a day between',
    asks({ effective: { from: '2024-07-01', until: '2024-01-01', by: 'applicationDate' } }),
    'warning never-applies /changes/0/effective',
  ],
  ['dates without ends', asks({ effective: { by: 'applicationDate' } }), 'missing-key /changes/0/effective -> from'],
  [
    'a date by something else',
    asks({ effective: { from: '2024-07-01', by: 'permitDate' } }),
    'not-a-choice /changes/0/effective/by',
  ],
  [
    'a second demand without id',
    [town('elm', [...(asks({})[0]?.changes as unknown[]), ...(asks({})[0]?.changes as unknown[])])],
    'duplicate-id /changes -> id',
  ],
  [
    'an exemption from a locked demand',
    change({ exempt: 'tank/x', of: ['safe'], clause: '1' }),
    'locked-demand /changes/0/of/0',
  ],
  [
    'an exemption from no demand',
    change({ exempt: 'tank/x', of: ['limt'], clause: '1' }),
    'unknown-demand /changes/0/of/0 -> limit',
  ],
  ['an exemption without citation', change({ exempt: 'tank/x' }), 'no-citation /changes/0 -> clause'],
  [
    'an added rule with a typo',
    change({
      add: { id: 'tank/new', ...rule({ demands: [demand('a', 'must', { 'tank.colr': 'red' })] }) },
      nature: 'amendment',
    }),
    'unknown-fact /changes/0/add/demands/0/require/tank.colr -> tank.color',
  ],
  [
    'an added rule without id',
    change({ add: rule({ demands: [] }), nature: 'amendment' }),
    'no-id /changes/0/add -> id',
  ],
  [
    'a layer that is not one',
    [{ ...town('elm', []), authority: { name: 'Elm', layer: 'village' } }],
    'not-a-choice /authority/layer',
  ],
  ['no word on who wrote it', [{ ...town('elm', []), written: undefined }], 'missing-key /written'],
  ['two overlays of one name', [town('elm', []), town('elm', [])], 'duplicate-id /overlay'],
]

describe('mistakes of rules', () => {
  it.each(ruleMistakes)('%s', (_name, rules, expected) => {
    expect(told(rules)).toContain(expected)
  })

  it('are all told in one run, each with its file', () => {
    const read = tryOpenRulebook(
      parts(
        {
          ...requires({ 'tank.colour': 'red' }),
          'tank/y': rule({
            demands: [{ id: 'a', severity: 'must', require: { 'tank.pressure': { atleast: '3' } }, basis: habit }],
          }),
        },
        asks({ demand: 'tank/z' }),
      ),
    )
    expect(read.ok ? [] : read.problems.map(({ file, code }) => `${file ?? ''} ${code}`)).toEqual([
      'rules/tank/x.yaml unknown-fact',
      'rules/tank/y.yaml unknown-operator',
      'rules/tank/y.yaml severity-above-ground',
      'overlay elm unknown-rule',
    ])
  })
})

describe('mistakes of towns', () => {
  it.each(townMistakes)('%s', (_name, overlays, expected) => {
    expect(told(good, overlays)).toContain(expected)
  })

  it('a good one opens without a word', () => {
    expect(told(good, asks({}))).toEqual([])
  })
})
