import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { compareNumbers, isAtLeast, isAtMost, isLess, isMore, si } from '../../src/units/index.js'

const numbers = fc.double({ noNaN: true })

describe('comparing', () => {
  it.each<[number, number, -1 | 0 | 1]>([
    [0.1 + 0.2, 0.3, 0],
    [1, 1 + 1e-10, 0],
    [1, 1 + 1e-8, -1],
    [1e12 + 1, 1e12, 0],
    [0, 1e-300, -1],
    [0, -0, 0],
    [-1, 1, -1],
    [Infinity, Infinity, 0],
    [-Infinity, -Infinity, 0],
    [Infinity, 1e308, 1],
    [-Infinity, Infinity, -1],
    [-1.7e308, 1.7e308, -1],
  ])('%d and %d', (a, b, expected) => {
    expect(compareNumbers(a, b)).toBe(expected)
  })

  it('sees no difference between spellings of one amount', () => {
    expect(compareNumbers(si('length', '1 ft'), si('length', '12 in'))).toBe(0)
    expect(compareNumbers(si('length', '304.8 mm'), si('length', '12 in'))).toBe(0)
    expect(compareNumbers(si('temperature', '140 F'), si('temperature', '60 C'))).toBe(0)
    expect(compareNumbers(si('pressure', '12 in wc'), si('pressure', '1 ft wc'))).toBe(0)
    expect(compareNumbers(si('heatRate', '80 MBH'), si('heatRate', '80,000 Btu/h'))).toBe(0)
  })

  it('is the opposite when turned around', () => {
    fc.assert(
      fc.property(numbers, numbers, (a, b) => {
        expect(compareNumbers(a, b)).toBe(0 - compareNumbers(b, a))
      }),
    )
  })

  it('finds every number equal to itself', () => {
    fc.assert(fc.property(numbers, (a) => compareNumbers(a, a) === 0))
  })

  it('is transitive on numbers apart by more than round-off', () => {
    fc.assert(
      fc.property(numbers, numbers, numbers, (a, b, c) => {
        fc.pre(isLess(a, b) && isLess(b, c))
        expect(compareNumbers(a, c)).toBe(-1)
      }),
    )
  })

  it('agrees with plain comparison on numbers apart by more than round-off', () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer(), (a, b) => {
        fc.pre(a !== b && Math.abs(a - b) > 1e-9 * Math.max(Math.abs(a), Math.abs(b)))
        expect(compareNumbers(a, b)).toBe(a < b ? -1 : 1)
      }),
    )
  })

  it('says one thing in four ways', () => {
    fc.assert(
      fc.property(numbers, numbers, (a, b) => {
        const order = compareNumbers(a, b)
        expect([isLess(a, b), isAtMost(a, b), isAtLeast(a, b), isMore(a, b)]).toEqual([
          order < 0,
          order <= 0,
          order >= 0,
          order > 0,
        ])
      }),
    )
  })

  it('does not let what is not a number pass as equal', () => {
    const refusal = expect.objectContaining({ name: 'UnitError', code: 'not-a-number' }) as Error
    for (const judge of [compareNumbers, isAtLeast, isAtMost, isMore, isLess]) {
      expect(() => judge(NaN, 1)).toThrow(refusal)
      expect(() => judge(1, NaN)).toThrow(refusal)
    }
  })
})
