import { describe, expect, it } from 'vitest'
import { largestText } from '../../src/node/read-text.js'
import { problemsIn, table, valueOf } from './reading.js'

const tooDeep = 'Lists and maps stand more than 64 deep inside one another here.'

describe('hostile texts', () => {
  it('lets an alias bomb be what it says, and refuses it', () => {
    const names = Array.from({ length: 30 }, (_, level) => `a${level}`)
    const bomb = names
      .map(
        (name, level) => `${name}: &${name} [${level === 0 ? 'x' : `*a${level - 1}, *a${level - 1}, *a${level - 1}`}]`,
      )
      .join('\n')
    const codes = problemsIn(bomb).map((problem) => problem.code)
    expect(codes.filter((code) => code === 'anchor')).toHaveLength(30)
    expect(codes.filter((code) => code === 'alias')).toHaveLength(87)
    expect(codes).toHaveLength(117)
  })

  it('reads 64 levels and refuses the 65th', () => {
    expect(JSON.stringify(valueOf(`${'['.repeat(64)}x${']'.repeat(64)}`))).toBe(`${'['.repeat(64)}"x"${']'.repeat(64)}`)
    expect(table(problemsIn(`${'['.repeat(65)}x${']'.repeat(65)}`))).toEqual([`1:65 nested-too-deep ${tooDeep}`])
  })

  it.each([
    ['brackets', '['.repeat(10_000), `1:65 nested-too-deep ${tooDeep}`],
    ['braces', '{a: '.repeat(10_000), `1:257 nested-too-deep ${tooDeep}`],
    ['dashes', '- '.repeat(10_000), `1:129 nested-too-deep ${tooDeep}`],
  ])('leaves 10,000 nested %s before they can fill the stack', (_, text, problem) => {
    expect(table(problemsIn(text))).toEqual([problem])
  })

  it('leaves nested indents, dozens of megabytes of them, as early', () => {
    const text = Array.from({ length: 9_000 }, (_, level) => `${' '.repeat(level)}a:\n`).join('')
    expect(table(problemsIn(text))).toEqual([`65:66 nested-too-deep ${tooDeep}`])
  })

  it('makes no prototype out of a key', () => {
    const text =
      '{ "__proto__": { "polluted": "yes" }, "a": { "constructor": { "prototype": { "polluted": "yes" } } } }'
    expect(problemsIn(text).map((problem) => problem.pointer)).toEqual([
      '/__proto__',
      '/a/constructor',
      '/a/constructor/prototype',
    ])
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false)
  })

  it('takes other names of every object for plain keys', () => {
    const value = valueOf('toString: a\nhasOwnProperty: b\nvalueOf: c\nlength: d\n')
    expect(Object.entries(value)).toEqual([
      ['toString', 'a'],
      ['hasOwnProperty', 'b'],
      ['valueOf', 'c'],
      ['length', 'd'],
    ])
  })

  it('reads a line of a million characters', () => {
    expect(valueOf(`a: ${'x '.repeat(500_000)}`)).toEqual({ a: 'x '.repeat(500_000).trim() })
    expect(
      Object.keys(valueOf(`{${Array.from({ length: 100_000 }, (_, at) => `k${at}: v`).join(', ')}}`)),
    ).toHaveLength(100_000)
  })

  it('shows the beginning of what is too long to show', () => {
    const [problem] = problemsIn(`a: *${'x'.repeat(1_000_000)}`)
    expect(problem?.message).toBe(
      `The reference "*${'x'.repeat(59)}..." is refused: write the value out. A text that begins with "*" is written in quotes.`,
    )
  })

  it('refuses more than 50 million characters without parsing them', () => {
    const text = '['.repeat(largestText + 1)
    expect(table(problemsIn(text))).toEqual([
      '1:1 text-too-large A text of more than 50000000 characters is not read: divide it.',
    ])
  })

  it('refuses more than two million words', () => {
    expect(table(problemsIn('- a\n'.repeat(600_000)))).toEqual([
      '400000:4 text-too-large A text of more than 2000000 words and marks is not read: divide it.',
    ])
  })

  it('refuses more than two million lines, in one text or in many', () => {
    const problem = '1:1 text-too-large A text of more than 2000000 lines is not read: divide it.'
    expect(table(problemsIn(`a: |\n${' b\n'.repeat(2_000_000)}`))).toEqual([problem])
    expect(table(problemsIn('\n'.repeat(2_000_000)))).toEqual([problem])
  })

  it('tells a thousand problems of a text that is nothing else', () => {
    const commas = problemsIn(`[${','.repeat(1_000_000)}]`)
    expect(commas).toHaveLength(1001)
    expect(commas[999]?.code).toBe('stray-comma')
    expect(commas.at(-1)).toEqual({
      code: 'more-problems',
      pointer: '',
      message: 'More problems are not shown.',
      file: 'test.yaml',
    })
    expect(problemsIn('}\n'.repeat(1_000_000)).length).toBe(1001)
    expect(problemsIn('a: null\n'.repeat(5_000)).length).toBe(1001)
  })

  it.each([
    [
      'a control character',
      'a: b\n\u0000',
      '2:1 not-text The control character U+0000 stands here: this is no text file.',
    ],
    [
      'an escape sequence',
      'a: \u001b[31m',
      '1:4 not-text The control character U+001B stands here: this is no text file.',
    ],
    [
      'lone carriage returns',
      'a: 1\rb: 2\r',
      '1:5 line-end This line ends with a carriage return alone: save the file with common line ends.',
    ],
  ])('refuses %s', (_, text, problem) => {
    expect(table(problemsIn(text))).toEqual([problem])
  })

  it('takes tabs between words and inside JSON for spaces', () => {
    expect(valueOf('a:\tb\nc: {\td:\te }\n')).toEqual({ a: 'b', c: { d: 'e' } })
    expect(valueOf('{\r\n\t"a": [\r\n\t\t"b"\r\n\t]\r\n}\r\n')).toEqual({ a: ['b'] })
  })
})
