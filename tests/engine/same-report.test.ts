import { describe, expect, it } from 'vitest'
import { checkInEngine, RulebookEngine } from '../../src/engine/index.js'
import { checkInstallation } from '../../src/index.js'
import { manyThings, pair, rulebook } from './workshop.js'

const bytes = (report: unknown): string => JSON.stringify(report)

describe('a report through the engine', () => {
  it('has the bytes of a report without it, whatever is wrong or not said', async () => {
    const engine = new RulebookEngine(rulebook)
    for (let seed = 0; seed < 60; seed++) {
      const document = manyThings(seed)
      const { report, faults } = await engine.check(document)
      expect(bytes(report)).toBe(bytes(checkInstallation(document, rulebook)))
      expect(faults).toEqual([])
    }
  })

  it('follows the same options', async () => {
    const options = { listPassed: true, judgedOn: '2026-03-01' }
    const { report } = await checkInEngine(pair, rulebook, options)
    expect(bytes(report)).toBe(bytes(checkInstallation(pair, rulebook, options)))
    expect(report.passed?.length).toBeGreaterThan(0)
  })

  it('tells a broken rule as it is told without the engine', async () => {
    const { report } = await checkInEngine(manyThings(6), rulebook)
    expect(report.broken).toEqual([
      { rule: 'kettle/sound', subject: 'Broken0', severity: 'stop', error: 'the gauge fell off' },
    ])
  })

  it('refuses an unreadable document as a check without the engine does', async () => {
    const unreadable = { ...pair, kettels: [] }
    const reason: unknown = await checkInEngine(unreadable, rulebook).catch((thrown: unknown) => thrown)
    expect(() => checkInstallation(unreadable, rulebook)).toThrow((reason as Error).message)
    expect(reason).toMatchObject({ code: 'unreadable-installation' })
  })
})
