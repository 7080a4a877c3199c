import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { oneLine, wrap } from '../../src/printing/wrap.js'

describe('wrapping', () => {
  it('breaks at spaces', () => {
    expect(wrap('one two three', 7)).toEqual(['one two', 'three'])
    expect(wrap('', 7)).toEqual([''])
  })

  it('keeps every line within the width and loses nothing but spaces', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), fc.integer({ min: 1, max: 60 }), (text, width) => {
        const lines = wrap(text, width)
        expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(width)
        expect(lines.join('').replaceAll(' ', '')).toBe(oneLine(text).replaceAll(' ', ''))
      }),
    )
  })

  it('gives the same lines when it wraps its own lines again', () => {
    fc.assert(
      fc.property(fc.lorem({ maxCount: 40 }), fc.integer({ min: 20, max: 60 }), (text, width) => {
        expect(wrap(wrap(text, width).join(' '), width)).toEqual(wrap(text, width))
      }),
    )
  })
})
