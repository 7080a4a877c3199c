import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseQuantity, printQuantity } from '../../src/units/index.js'

const dayMilliseconds = 86_400_000

/** The platform's own calendar; setUTCFullYear because Date.UTC takes years below 100 for 19xx. */
function platformDay(year: number, month: number, day: number): number {
  const date = new Date(0)
  date.setUTCFullYear(year, month - 1, day)
  return date.getTime() / dayMilliseconds
}

function written(year: number, month?: number, day?: number): string {
  const parts = [String(year).padStart(4, '0')]
  if (month !== undefined) parts.push(String(month).padStart(2, '0'))
  if (day !== undefined) parts.push(String(day).padStart(2, '0'))
  return parts.join('-')
}

const years = fc.integer({ min: 0, max: 9999 })
const months = fc.integer({ min: 1, max: 12 })

describe('dates', () => {
  it('a day is a point', () => {
    expect(parseQuantity('1970-01-01', 'date')).toEqual({ ok: true, low: 0, high: 0 })
    expect(parseQuantity('2024-07-01', 'date')).toEqual({ ok: true, low: 19_905, high: 19_905 })
  })

  it('a month and a year are spans with both ends', () => {
    expect(parseQuantity('2024-07', 'date')).toEqual({ ok: true, low: 19_905, high: 19_935 })
    expect(parseQuantity('2024', 'date')).toEqual({ ok: true, low: 19_723, high: 20_088 })
  })

  it('agrees with the platform on every day it takes, and refuses the others', () => {
    fc.assert(
      fc.property(years, months, fc.integer({ min: 1, max: 31 }), (year, month, day) => {
        const expected = platformDay(year, month, day)
        const exists = new Date(expected * dayMilliseconds).getUTCDate() === day
        const parsed = parseQuantity(written(year, month, day), 'date')
        expect(parsed.ok).toBe(exists)
        if (parsed.ok) expect([parsed.low, parsed.high]).toEqual([expected, expected])
      }),
      { numRuns: 5000 },
    )
  })

  it('agrees with Date.UTC in the years it knows', () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 9999 }), months, (year, month) => {
        const first = Date.UTC(year, month - 1, 1) / dayMilliseconds
        const last = Date.UTC(year, month, 0) / dayMilliseconds
        expect(parseQuantity(written(year, month), 'date')).toEqual({ ok: true, low: first, high: last })
      }),
    )
  })

  it('a year runs from its first to its last day', () => {
    fc.assert(
      fc.property(years, (year) => {
        const span = { ok: true, low: platformDay(year, 1, 1), high: platformDay(year, 12, 31) }
        expect(parseQuantity(written(year), 'date')).toEqual(span)
      }),
    )
  })

  it('prints what the platform prints', () => {
    fc.assert(
      fc.property(fc.integer({ min: -719_528, max: 2_932_896 }), (days) => {
        const expected = new Date(days * dayMilliseconds).toISOString().slice(0, 10)
        expect(printQuantity(days, 'date', 'ip')).toBe(expected)
        expect(printQuantity(days + 0.75, 'date', 'si')).toBe(expected)
      }),
      { numRuns: 5000 },
    )
  })

  it('prints years before the first', () => {
    expect(printQuantity(-719_529, 'date', 'ip')).toBe('-0001-12-31')
  })

  it.each(['2023-02-29', '1900-02-29', '2024-04-31', '2024-00', '2024-13', '2024-01-00', '2024-01-32'])(
    '%s is not in the calendar',
    (text) => {
      expect(parseQuantity(text, 'date').ok).toBe(false)
    },
  )

  it.each(['2000-02-29', '2024-02-29', '2024-12-31'])('%s is in the calendar', (text) => {
    expect(parseQuantity(text, 'date').ok).toBe(true)
  })

  it.each(['24', '07/01/2024', 'July 2024', '2024-07-01T00:00', '20240701', '-2024', 'unknown'])(
    '%s is not how dates are written',
    (text) => {
      expect(parseQuantity(text, 'date')).toEqual({
        ok: false,
        message: `"${text}" is not a date; write 2024, 2024-07 or 2024-07-01`,
      })
    },
  )

  it.each([
    ['2024-7-1', '2024-07-01'],
    ['2024/07/01', '2024-07-01'],
    ['2024.7', '2024-07'],
  ])('%s is met with %s', (text, suggestion) => {
    expect(parseQuantity(text, 'date')).toMatchObject({ ok: false, suggestion })
  })

  it('suggests no day that is not in the calendar', () => {
    expect(parseQuantity('2023/2/29', 'date')).not.toHaveProperty('suggestion')
  })
})
