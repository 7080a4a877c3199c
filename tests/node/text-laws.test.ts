import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readText } from '../../src/node/read-text.js'
import { valueOf } from './reading.js'

const refusedKeys = new Set(['__proto__', 'constructor', 'prototype'])
const text = fc.oneof(
  fc.string(),
  fc.string({ unit: 'binary' }),
  fc.constantFrom('null', '~', '', ' #x', 'a: b', '{id}', '- a', '301.10', '&a', '*a', '<<', '\u2028', '\uFEFF'),
)
const key = text.filter((name) => !refusedKeys.has(name) && name.length < 1000)

const { document } = fc.letrec<{ document: unknown; list: unknown; map: unknown }>((tie) => ({
  document: fc.oneof({ maxDepth: 5, withCrossShrink: true }, text, tie('list'), tie('map')),
  list: fc.array(tie('document'), { maxLength: 5 }),
  map: fc.dictionary(key, tie('document'), { maxKeys: 5, noNullPrototype: true }),
}))
const indent = fc.constantFrom(undefined, 1, 2, '\t')

describe('laws of reading', () => {
  it('gives back every JSON document of texts', () => {
    fc.assert(
      fc.property(document, indent, (value, space) => {
        expect(valueOf(JSON.stringify(value, null, space))).toEqual(value)
      }),
      { numRuns: 500 },
    )
  })

  it('gives back every number as it was written', () => {
    fc.assert(
      fc.property(
        fc.array(fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.integer(), fc.bigInt()).map(String)),
        (numbers) => {
          expect(valueOf(`[${numbers.join(', ')}]`)).toEqual(numbers)
          expect(valueOf(`[${numbers.join(',')}]`)).toEqual(numbers)
        },
      ),
    )
  })

  it('finds every pointer of a document at its value, and every key', () => {
    fc.assert(
      fc.property(document, indent, (value, space) => {
        const written = JSON.stringify(value, null, space)
        const read = readText(written, 'test.json')
        if (!read.ok) throw new Error(JSON.stringify(read.problems))
        const after = (place: { line: number; column: number } | undefined) => rest(written, place)
        for (const { pointer, inner, key } of placesIn(value)) {
          expect(after(read.locate(pointer)).startsWith(beginningOf(inner))).toBe(true)
          expect(
            after(read.locateKey(pointer)).startsWith(
              key === undefined ? beginningOf(inner) : `${JSON.stringify(key)}:`,
            ),
          ).toBe(true)
        }
        expect(read.locate('/x-nowhere/0')).toBeUndefined()
      }),
      { numRuns: 300 },
    )
  })

  it('answers any text with data or with problems that stand inside it', () => {
    const scrap = fc.constantFrom(
      'a',
      '1',
      ' ',
      '\n',
      '\n  ',
      ': ',
      ':',
      ', ',
      ',',
      '[',
      ']',
      '{',
      '}',
      '- ',
      '? ',
      '&',
      '*',
      '!',
      '|',
      '>',
      '"',
      "'",
      ' #',
      '#',
      '%',
      '---\n',
      '\r\n',
      '\t',
      '\\',
      'null',
      '<<',
    )
    fc.assert(
      fc.property(
        fc.array(scrap, { maxLength: 40 }).map((scraps) => scraps.join('')),
        (written) => {
          const read = readText(written, 'test.yaml')
          const lines = written.split('\n')
          const problems = read.ok ? [] : read.problems
          expect(read.ok || problems.length > 0).toBe(true)
          for (const { line = 0, column = 0 } of problems)
            expect(column >= 1 && column <= (lines[line - 1] ?? '').length + 1).toBe(true)
        },
      ),
      { numRuns: 3000 },
    )
  })
})

interface Found {
  readonly pointer: string
  readonly inner: unknown
  /** Absent in a list. */
  readonly key?: string
}

function placesIn(value: unknown, pointer = ''): readonly Found[] {
  return [{ pointer, inner: value }, ...inside(value, pointer)]
}

function inside(value: unknown, pointer: string): readonly Found[] {
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([name, inner]) => {
    const [here, ...others] = placesIn(inner, `${pointer}/${name.replaceAll('~', '~0').replaceAll('/', '~1')}`)
    return here === undefined ? [] : [Array.isArray(value) ? here : { ...here, key: name }, ...others]
  })
}

function rest(written: string, place: { line: number; column: number } | undefined): string {
  if (place === undefined) return 'nowhere'
  return written
    .split('\n')
    .slice(place.line - 1)
    .join('\n')
    .slice(place.column - 1)
}

function beginningOf(value: unknown): string {
  return typeof value === 'string' ? JSON.stringify(value) : JSON.stringify(value).slice(0, 1)
}
