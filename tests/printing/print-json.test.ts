import { describe, expect, it } from 'vitest'
import { printJson } from '../../src/printing/index.js'
import { sample } from './sample-report.js'
import { seedReport } from './seed-reports.js'

describe('JSON', () => {
  it('is the whole report', () => {
    expect(JSON.parse(printJson(sample))).toEqual(sample)
  })

  it('ends with a line break and begins with what a reader looks for', () => {
    expect(printJson(sample)).toMatch(/^\{\n {2}"outcome": "failing",\n {2}"headline": .*\}\n$/s)
  })

  it('has its keys in one order, whoever built the report', () => {
    const turned = Object.fromEntries(Object.entries(sample).reverse()) as unknown as typeof sample
    expect(Object.keys(turned)).not.toEqual(Object.keys(sample))
    expect(printJson(turned)).toBe(printJson(sample))
  })

  it.each(['coopers-stair', 'minimal'])('of %s is the same bytes in two runs', async (name) => {
    expect(await seedReport(name, '--format', 'json')).toBe(await seedReport(name, '--format', 'json'))
  })
})
