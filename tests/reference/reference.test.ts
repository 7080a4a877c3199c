import { describe, expect, it } from 'vitest'
import type { CheckRecord } from './adapter.js'
import { type Answers, checkRecord, isPublished } from './check-records.js'
import { collectAdapters } from './collect-adapters.js'
import { contradictions } from './contradictions.js'
import { readRecords } from './read-records.js'
import { isFailure, reportLines } from './report.js'

const records = readRecords()
const adapters = await collectAdapters()

describe('values that others published', () => {
  it.each(records.map((record) => [record.id, record.source, record] as const))('%s (%s)', (_id, _source, record) => {
    const checked = checkRecord(record, { adapters, contradictions })
    expect(isFailure(checked), JSON.stringify(checked)).toBe(false)
  })

  it('are each listed once', () => {
    expect(new Set(records.map(({ id }) => id)).size).toBe(records.length)
  })

  it('each have an adapter, and each adapter and each contradiction has a value', () => {
    const ids = records.map(({ id }) => id)
    expect([...adapters.keys()].filter((key) => !ids.some((id) => id.startsWith(key)))).toEqual([])
    expect(Object.keys(contradictions).filter((id) => !ids.includes(id))).toEqual([])
  })
})

describe('the check itself', () => {
  const record: CheckRecord = {
    id: 'x-1',
    quantity: 'length',
    inputs: {},
    expected: 100,
    unit: 'm',
    tolerance: 0.01,
    tolerance_kind: 'rel',
    source: 'a book',
    basis: 'COMPUTED',
    independent: false,
  }
  const answering = (value: number): Answers => ({ adapters: new Map([['x-', () => value]]), contradictions: {} })

  it('holds to the tolerance on both sides', () => {
    const outcomes = [98.9, 99.1, 100.9, 101.1, NaN].map((value) => checkRecord(record, answering(value)).outcome)
    expect(outcomes).toEqual(['miss', 'within', 'within', 'miss', 'miss'])
    const absolute = { ...record, tolerance_kind: 'abs' } as const
    expect([99.98, 100.005].map((value) => checkRecord(absolute, answering(value)).outcome)).toEqual(['miss', 'within'])
  })

  it('fails where nobody answers, where an adapter throws, and where a contradiction is none', () => {
    const throwing = (): number => {
      throw new Error('no such row')
    }
    const checked = [
      checkRecord(record, { adapters: new Map(), contradictions: {} }),
      checkRecord(record, { adapters: new Map([['x-', throwing]]), contradictions: {} }),
      checkRecord(record, { ...answering(100), contradictions: { 'x-1': 'another book' } }),
    ]
    expect(checked.map(({ outcome }) => outcome)).toEqual(['unanswered', 'broken', 'broken'])
    expect(checked.every(isFailure)).toBe(true)
  })

  it('lets the longest key answer', () => {
    const both = new Map([
      ['x-', () => 0],
      ['x-1', () => 100],
    ])
    expect(checkRecord(record, { adapters: both, contradictions: {} }).outcome).toBe('within')
  })

  it('counts a contradicted value, and one that does not apply, as not within', () => {
    const published = { ...record, independent: true }
    const none = { adapters: new Map([['x-', () => ({ notApplicable: 'another pipe' })]]), contradictions: {} }
    const checked = [
      checkRecord(published, answering(100)),
      checkRecord(published, { ...answering(90), contradictions: { 'x-1': 'another book' } }),
      checkRecord(published, none),
    ]
    expect(checked.some(isFailure)).toBe(false)
    expect(reportLines(checked).slice(-2)).toEqual([
      'Of the others 1 do not apply, 1 are not within for a known reason, 0 are missed.',
      '1 of 3 published values within tolerance',
    ])
    expect(reportLines(checked).join('\n')).toContain('another pipe')
  })

  it('takes what an authority says, recalled or read, for published', () => {
    expect([record, { ...record, independent: true }, { ...record, basis: 'READ' as const }].map(isPublished)).toEqual([
      false,
      true,
      true,
    ])
  })
})
