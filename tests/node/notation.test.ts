import { describe, expect, it } from 'vitest'
import { problemsIn, table } from './reading.js'

const quoted = (mark: string) => `A text that begins with "${mark}" is written in quotes.`
const colon = 'Text with ": " in it is written in quotes; a new key needs a comma or a line of its own.'
const hash =
  'Text with " #" in it is written in quotes: what follows is taken for a comment. A comment has a space after its "#".'
const brace =
  'More text stands after the closing brace or bracket: a text that begins with a brace or bracket is written in quotes.'
const afterQuote =
  'More text stands after the closing quote: put the whole text in quotes, of the other kind if it has quotes in it.'
const openQuote = 'This quote is not closed; a text that begins with a quote mark is itself written in quotes.'
const runsOn =
  'This text runs on into the next line, where a key stands: put the comma between them, or begin the key in the column of its neighbors.'
const lonely = 'A colon is missing here; a line that belongs to the text above is indented further than its key.'
const dash = 'A text that begins with "- " is written in quotes; a list begins on the next line, or stands in brackets.'
const stray = 'Nothing stands before this comma: drop it, or write "unknown".'
const keyOfList =
  'A key is a text, and this is a list: a text that begins with a brace or bracket is written in quotes.'
const keyOfMap = 'A key is a text, and this is a map: a text that begins with a brace or bracket is written in quotes.'
const misplaced =
  'This line belongs to nothing above it: begin it in the column of its neighbors, and write a space after a dash.'

const mistakes: readonly (readonly [about: string, text: string, ...problems: string[]])[] = [
  ['an empty file', '', '1:1 empty-document Nothing is written here.'],
  ['comments only', '# nothing\n', '1:1 empty-document Nothing is written here.'],
  ['a document mark only', '---\n', '1:1 empty-document Nothing is written here.'],
  ['an empty value', 'a:\nb: 1\n', '1:3 empty-value A value is missing here: write "unknown".'],
  ['an empty value in braces', '{ a: , b: 1 }', '1:6 empty-value A value is missing here: write "unknown".'],
  ['an empty item', 'a:\n  -\n  - b\n', '2:4 empty-value A value is missing here: write "unknown".'],
  ['an empty block', 'a: |\nb: 1\n', '1:4 empty-value A value is missing here: write "unknown".'],
  [
    'null',
    'a: null\nb: ~\nc: [Null]\nd: NULL\n',
    '1:4 empty-value "null" is no value: write "unknown".',
    '2:4 empty-value "~" is no value: write "unknown".',
    '3:5 empty-value "Null" is no value: write "unknown".',
    '4:4 empty-value "NULL" is no value: write "unknown".',
  ],
  ['a key twice', 'a: 1\nb: 2\na: 3\n', '3:1 duplicate-key "a" is written twice in one map, first in line 1.'],
  [
    'a quoted key twice, in braces',
    '{ a: 1, "a": 2 }',
    '1:9 duplicate-key "a" is written twice in one map, first in line 1.',
  ],
  ['an anchor', 'a: &x 1\n', `1:4 anchor The anchor "&x" is refused: write each value out. ${quoted('&')}`],
  ['a reference', 'a: *x\n', `1:4 alias The reference "*x" is refused: write the value out. ${quoted('*')}`],
  ['a merge key', '<<: { a: 1 }\n', '1:1 merge-key The merge key "<<" is refused: write each value out.'],
  [
    'a tag',
    'a: !!int 3\nb: !own {}\n',
    `1:4 tag The tag "!!int" is refused: the field tells the type. ${quoted('!')}`,
    `2:4 tag The tag "!own" is refused: the field tells the type. ${quoted('!')}`,
  ],
  ['a directive', '%YAML 1.1\n---\na: 1\n', '1:1 directive The directive "%YAML 1.1" is refused: leave the line out.'],
  [
    'a second document',
    'a: 1\n---\nb: 2\n---\nc: 3\n',
    '2:1 several-documents A second document begins here: write one document in a file.',
  ],
  ['a list as key', '[a]: b\n', `1:1 key-not-text ${keyOfList}`],
  ['a map as key', '{ {a: b}: c }', `1:3 key-not-text ${keyOfMap}`],
  ['a list as key, spelled out', '? [a]\n: b\n', `1:3 key-not-text ${keyOfList}`],
  ['no key', 'a: 1\n: b\n', '2:1 key-not-text The key is missing before this colon.'],
  [
    'keys that mean something else',
    '{ __proto__: 1, constructor: 2, "prototype": 3 }',
    '1:3 reserved-key "__proto__" cannot be a key.',
    '1:17 reserved-key "constructor" cannot be a key.',
    '1:33 reserved-key "prototype" cannot be a key.',
  ],
  [
    'a comma in a number, in braces',
    '{ input: 75,000 Btu/h }',
    '1:10 comma-in-number "75,000 Btu/h" is cut at its comma here: quote it, or drop the comma.',
  ],
  [
    'two commas in a number',
    '{ a: 1,250,000 Btu/h, b: 2 }',
    '1:6 comma-in-number "1,250,000 Btu/h" is cut at its comma here: quote it, or drop the comma.',
  ],
  [
    'a comma in a number, in JSON',
    '{"a": 75,000}',
    '1:7 comma-in-number "75,000" is cut at its comma here: quote it, or drop the comma.',
  ],
  [
    'a comma in a number, in a list',
    'a: [3 in, 75,000 Btu/h]\n',
    '1:11 comma-in-number "75,000 Btu/h" is cut at its comma here: quote it, or drop the comma.',
  ],
  [
    'two commas in a number, in a list',
    '[1,250,000 Btu/h]',
    '1:2 comma-in-number "1,250,000 Btu/h" is cut at its comma here: quote it, or drop the comma.',
  ],
  [
    'a comma and a space in a number',
    '{ a: 75, 000 Btu/h }',
    '1:10 digit-key The key "000 Btu/h" begins with a digit: quote it, or drop the comma.',
  ],
  ['a key that begins with a digit', '3/4: x\n', '1:1 digit-key The key "3/4" begins with a digit: quote it.'],
  [
    'a key that begins with a digit, in braces',
    '{ 3/4: x }',
    '1:3 digit-key The key "3/4" begins with a digit: quote it, or drop the comma.',
  ],
  [
    'a comma in a text, in braces',
    '{ note: clear, see photo }',
    '1:16 key-without-value "see photo" stands without a value: quote it, or drop the comma.',
  ],
  [
    'a key without value, spelled out',
    '? a\n',
    '1:3 key-without-value "a" stands without a value: write "a: unknown".',
  ],
  [
    'no space after a colon, in braces',
    '{ a:1, b: 2 }',
    '1:3 key-without-value "a:1" stands without a value: write a space after the colon.',
  ],
  [
    'no space after a colon',
    'a:1\nb: 2\n',
    '1:1 runs-on This line runs on into the next: write a space after the colon.',
  ],
  ['a colon in a text', 'say: fail: this\n', `1:6 unquoted-colon ${colon}`],
  ['a colon in a text, in braces', '{ say: fail: this, b: 1 }', `1:8 unquoted-colon ${colon}`],
  ['a comma forgotten in JSON', '{"a": 1 "b": 2}', `1:7 unquoted-colon ${colon}`],
  ['a hash in a text', 'name: Unit #4\n', `1:12 unquoted-hash ${hash}`],
  ['a hash in a text, in braces', '{ name: Unit #4, b: 1 }\n', `1:14 unquoted-hash ${hash}`],
  ['a text that begins with a brace', 'say: {id} stands\n', `1:11 unquoted-brace ${brace}`],
  ['a text that begins with a brace, in braces', '{ fail: {id} stands, b: 1 }', `1:14 unquoted-brace ${brace}`],
  [
    'a text that is a brace',
    'say: {id}\n',
    '1:7 key-without-value "id" stands without a value: write "id: unknown"; a text that begins with a brace is written in quotes.',
  ],
  ['a text that begins with a bracket', 'a: [b] c\n', `1:8 unquoted-brace ${brace}`],
  [
    'a text that begins with a brace and has a colon',
    '{ a: {b}: c }',
    '1:9 missing-comma A comma is missing before ":"; a text that begins with a brace is written in quotes.',
  ],
  ['a text that begins with a quote', 'a: "b" c\n', `1:8 text-after-quote ${afterQuote}`],
  ['a quote in a quoted text', 'a: "7" wc"\n', `1:8 text-after-quote ${afterQuote}`],
  [
    'a text that begins with a mark',
    'a: @b\nb: `c`\nc: %d\n',
    `1:4 unquoted-start ${quoted('@')}`,
    `2:4 unquoted-start ${quoted('`')}`,
    `3:4 unquoted-start ${quoted('%')}`,
  ],
  ['a text that begins with a dash', 'a: - b\n', `1:4 unquoted-start ${dash}`],
  ['a quote that is not closed', 'a: "b\nc: d\n', `1:4 unclosed-quote ${openQuote}`],
  ['an apostrophe that opens a quote', "a: b\nc: 'tis\n", `2:4 unclosed-quote ${openQuote}`],
  ['a brace that is not closed', 'a: { b: 1\nc: 2\n', '1:4 unclosed This bracket is not closed with "}".'],
  ['JSON that is cut off', '{"a": {"b": [1, 2]}', '1:1 unclosed This bracket is not closed with "}".'],
  ['a bracket closed by a brace', 'a: [b}\n', '1:4 unclosed This bracket is not closed with "]".'],
  [
    'a brace too many',
    'a: {b: c}}\n',
    '1:10 stray-bracket This "}" closes nothing; a text with brackets or braces is written in quotes.',
  ],
  ['a comma too many', '[a,, b]', `1:4 stray-comma ${stray}`],
  ['a comma too early', '{ , a: b }', `1:3 stray-comma ${stray}`],
  [
    'a tab before a key',
    'a:\n\tb: 1\n',
    '2:1 tab-indent A tab stands at the beginning of this line: indent with spaces.',
  ],
  ['a key indented too far', 'a: 1\n b: 2\n', `1:4 runs-on ${runsOn}`],
  ['a comma forgotten at the end of a line', '{ a: 1\n  b: 2 }', `1:6 runs-on ${runsOn}`],
  [
    'a comment of another language',
    '{"a": 1, // note\n "b": 2}',
    '1:10 runs-on This key runs on into the next line: put the comma between them, and write comments with "#".',
  ],
  [
    'a list under a text',
    'a: b\n  - c\n',
    '1:4 runs-on This text runs on into a line that begins with a dash: give the list a key of its own, or put the text in quotes.',
  ],
  [
    'a list among keys',
    'a: 1\n- b\n',
    '2:1 runs-on A list item stands among keys: give the list a key of its own, or indent it.',
  ],
  [
    'a key in no column',
    'a:\n  b: 1\n c: 2\n',
    '3:1 indentation This line does not begin in the column of its neighbors.',
  ],
  ['a key beside a list', '- a\nb: 1\n', `2:1 indentation ${misplaced}`],
  ['no space after a dash', '- a\n-b\n', `2:1 indentation ${misplaced}`],
  ['a line without a colon', 'a: b\nc\n', `2:1 key-without-value ${lonely}`],
  [
    'an escape that is none',
    'a: "b\\q"\n',
    '1:6 unknown-escape In double quotes a backslash changes the next letter, and this one is not known: write "\\\\" for a backslash, or use single quotes.',
  ],
  ['a key too long', `${'k'.repeat(1025)}: v\n`, '1:1 key-too-long A key has at most 1024 characters.'],
  ['two keys in one', '"a" "b": c\n', '1:5 not-yaml This is not YAML: Unexpected double-quoted-scalar token.'],
]

describe('mistakes in the notation', () => {
  it.each(mistakes)('%s', (_, text, ...problems) => {
    expect(table(problemsIn(text))).toEqual(problems)
  })

  it('shows the text to write instead', () => {
    expect(problemsIn('{ a: 1,250,000 Btu/h, b: null }').map((problem) => problem.nearest)).toEqual([
      '1250000 Btu/h',
      'unknown',
    ])
  })

  it('points at the value or key that is wrong', () => {
    const text = 'a:\n  - { b: null, c~/d: 1, c~/d: 2 }\n  - { e: 5,000 }\n  - [5,000 in]\n  - "": { 1x: y }\n'
    expect(problemsIn(text).map((problem) => problem.pointer)).toEqual([
      '/a/0/b',
      '/a/0/c~0~1d',
      '/a/1/e',
      '/a/2/0',
      '/a/3//1x',
    ])
  })

  it('tells all mistakes of a text at once, in reading order', () => {
    const text =
      'a: null\nb: [75,000 in]\na: 2\nc: &x 1\nd: *x\n\ne: { f, g: h }\n\ni: "j" k\nl: { m: 1, m: 2 }\nsay: fail: this\n'
    expect(problemsIn(text).map(({ line, code }) => `${line} ${code}`)).toEqual([
      '1 empty-value',
      '2 comma-in-number',
      '3 duplicate-key',
      '4 anchor',
      '5 alias',
      '7 key-without-value',
      '9 text-after-quote',
      '11 unquoted-colon',
    ])
  })

  it('leaves out what only seems wrong beside a broken place', () => {
    expect(problemsIn('say: id: x\nid: y\n').map(({ line, code }) => `${line} ${code}`)).toEqual(['1 unquoted-colon'])
  })
})
