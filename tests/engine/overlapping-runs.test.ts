import { Engine } from 'json-rules-engine'
import { describe, expect, it } from 'vitest'
import { RulebookEngine, type EngineCheck } from '../../src/engine/index.js'
import { checkInstallation } from '../../src/index.js'
import { alone, fail, plain } from './host.js'
import { manyThings, pair, rulebook } from './workshop.js'

describe('traps 1 and 12: runs that overlap', () => {
  const documents = Array.from({ length: 400 }, (_, seed) => manyThings(seed))
  const expected = documents.map((document) => JSON.stringify(checkInstallation(document, rulebook)))

  it('the stock engine loses results that way', async () => {
    const stock = new Engine([
      { conditions: { all: [{ fact: 'fuel', operator: 'equal', value: 'gas' }] }, event: { type: 'gas' } },
    ])
    const runs = await Promise.all(
      documents.map(async (_, index) => {
        for (let wait = 0; wait < index; wait++) await Promise.resolve()
        return stock.run({ fuel: 'gas' })
      }),
    )
    expect(runs.filter(({ results }) => results.length === 0).length).toBeGreaterThan(0)
  })

  it('a pool of eight on one engine loses and doubles nothing', async () => {
    const engine = new RulebookEngine(rulebook, {
      hostRules: [plain, { ...plain, name: 'shop/slow', priority: 5 }],
      hostFacts: { slow: () => Promise.resolve('yes') },
    })
    const waiting = [...documents.entries()]
    const checks = new Map<number, EngineCheck>()
    const worker = async (): Promise<void> => {
      for (let next = waiting.shift(); next !== undefined; next = waiting.shift())
        checks.set(next[0], await engine.check(next[1]))
    }
    await Promise.all(Array.from({ length: 8 }, worker))
    expect(documents.map((_, index) => JSON.stringify(checks.get(index)?.report))).toEqual(expected)
    expect(documents.map((_, index) => checks.get(index)?.host.length)).toEqual(
      documents.map((_, index) => 2 * (1 + (index % 4))),
    )
    expect([...checks.values()].flatMap(({ faults }) => faults)).toEqual([])
  })

  it('a hundred started one microtask apart lose nothing', async () => {
    const engine = new RulebookEngine(rulebook, { hostRules: [plain] })
    const runs = await Promise.all(
      documents.slice(0, 100).map(async (document, index) => {
        for (let wait = 0; wait < index; wait++) await Promise.resolve()
        return engine.check(document)
      }),
    )
    expect(runs.map(({ report }) => JSON.stringify(report))).toEqual(expected.slice(0, 100))
  })

  it('one document checked again gives the same again', async () => {
    const engine = new RulebookEngine(rulebook, { hostRules: [plain] })
    const [first, second] = [await engine.check(pair), await engine.check(pair)]
    expect(second).toEqual(first)
    expect(second.host).toHaveLength(2)
  })
})

describe('trap 2: good, bad, good in a loop', () => {
  it('a bad document leaves the next check whole', async () => {
    const engine = new RulebookEngine(rulebook, { hostRules: [plain] })
    for (let round = 0; round < 5; round++) {
      expect((await engine.check(pair)).report).toEqual(alone)
      await expect(engine.check({ ...pair, phase: 'never' as 'final' })).rejects.toThrow(/never/)
      const { report, host, faults } = await engine.check(pair)
      expect([report, host.length, faults]).toEqual([alone, 2, []])
    }
  })

  it('a listener that fails every other time leaves the next check whole', async () => {
    const engine = new RulebookEngine(rulebook, { hostRules: [plain] })
    const failing = { now: false }
    engine.on('gas-kettle', () => (failing.now ? fail() : undefined))
    for (let round = 0; round < 6; round++) {
      failing.now = round % 2 === 1
      const { report, host, faults } = await engine.check(pair)
      expect([report, host.length, faults.length]).toEqual([alone, 2, failing.now ? 1 : 0])
    }
  })
})
