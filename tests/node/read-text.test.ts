import { describe, expect, it } from 'vitest'
import { readText } from '../../src/node/read-text.js'
import { problemsIn, valueOf } from './reading.js'

describe('what a text says', () => {
  it('keeps every scalar as the text that was written', () => {
    const text =
      'clause: 301.10\nyes: yes\nno: No\noctal: 012\nhex: 0x1F\nsize: 1-1/4\nday: 2025-09-03\nhour: 5:30\nhuge: 1e999\nsigned: +5\ndot: .5\ninches: 7" wc\n'
    expect(valueOf(text)).toEqual({
      clause: '301.10',
      yes: 'yes',
      no: 'No',
      octal: '012',
      hex: '0x1F',
      size: '1-1/4',
      day: '2025-09-03',
      hour: '5:30',
      huge: '1e999',
      signed: '+5',
      dot: '.5',
      inches: '7" wc',
    })
  })

  it('keeps a number of a hundred thousand digits as it stands', () => {
    const digits = '9'.repeat(100_000)
    expect(valueOf(`[${digits}, -${digits}.${digits}]`)).toEqual([digits, `-${digits}.${digits}`])
  })

  it('gives the content of quoted and block texts, empty and null-like ones too', () => {
    expect(valueOf('a: "null"\nb: \'it\'\'s: #1\'\nc: ""\nd: |\n  one\n  two\ne: >-\n  one\n  two\n')).toEqual({
      a: 'null',
      b: "it's: #1",
      c: '',
      d: 'one\ntwo\n',
      e: 'one two',
    })
  })

  it('reads the document of the guide', () => {
    const text = [
      'installation: 1                       # document schema version',
      'none: [pressureReducer, emergencySwitch]',
      'components:',
      '  - { id: B1,  kind: boiler, use: equipment/b75, input: 75000 Btu/h, mawp: 50 psi }',
      '  - { id: EX1, kind: expansionTank,',
      '      precharge: { value: 16 psi, how: gauge, evidence: [P17] }, prechargeWaterSideEmpty: yes }',
    ].join('\n')
    expect(valueOf(text)).toEqual({
      installation: '1',
      none: ['pressureReducer', 'emergencySwitch'],
      components: [
        { id: 'B1', kind: 'boiler', use: 'equipment/b75', input: '75000 Btu/h', mawp: '50 psi' },
        {
          id: 'EX1',
          kind: 'expansionTank',
          precharge: { value: '16 psi', how: 'gauge', evidence: ['P17'] },
          prechargeWaterSideEmpty: 'yes',
        },
      ],
    })
  })

  it('reads JSON, numbers and booleans as texts', () => {
    expect(valueOf('{\n\t"a": [301.10, true],\n\t"b": {"c": "x\\u00b0\\/y"}\n}')).toEqual({
      a: ['301.10', 'true'],
      b: { c: 'x\u00b0/y' },
    })
  })

  it('reads what begins and ends with document marks, has a byte order mark or Windows line ends', () => {
    expect(valueOf('---\na: 1\n...\n')).toEqual({ a: '1' })
    expect(valueOf('\uFEFFa: 1\nb: 2\n')).toEqual({ a: '1', b: '2' })
    expect(valueOf('a: 1\r\nb:\r\n  - x\r\n  - y\r\nc: |\r\n  one\r\n')).toEqual({ a: '1', b: ['x', 'y'], c: 'one\n' })
  })

  it('takes what a comment says for a comment', () => {
    expect(
      valueOf('# first\na: b # second\nc: [1, # third\n  2] #fourth\nd: "e" #fifth\nf: |\n  g\n #sixth\n'),
    ).toEqual({ a: 'b', c: ['1', '2'], d: 'e', f: 'g\n' })
  })

  it('leaves two numbers of a list two numbers', () => {
    expect(valueOf('[100,200,-5,300]')).toEqual(['100', '200', '-5', '300'])
  })

  it('counts columns after a byte order mark and in Windows files as an editor does', () => {
    expect(problemsIn('\uFEFFa: null\r\nb: ~\r\n').map(({ line, column }) => [line, column])).toEqual([
      [1, 4],
      [2, 4],
    ])
  })

  it('names the file in every problem', () => {
    const read = readText('a: null\nb: *c\n', 'house.yaml')
    expect(read.ok ? [] : read.problems.map((problem) => problem.file)).toEqual(['house.yaml', 'house.yaml'])
  })
})
