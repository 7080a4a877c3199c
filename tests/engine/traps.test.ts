import { createRequire } from 'node:module'
import { Engine, type Rule } from 'json-rules-engine'
import { describe, expect, it, vi } from 'vitest'
import {
  checkInEngine,
  Fact,
  Operator,
  OperatorDecorator,
  RulebookEngine,
  type HostRule,
} from '../../src/engine/index.js'
import { openForeignCopy } from './foreign-copy.js'
import { alone, asking, plain } from './host.js'
import { manyThings, pair, rulebook } from './workshop.js'

// One test for each measured trap of json-rules-engine that concerns us. Traps 1, 2 and 12 stand with
// the overlapping runs, 4 with the host's faults, 14 and 16 with the front door, 18 and 19 with the referee.

const verdicts = alone.tally.asked
const foreign = openForeignCopy()

describe('trap 3: a rule of ours elsewhere', () => {
  const ours = (engine: RulebookEngine): Rule => (engine as unknown as { rules: readonly Rule[] }).rules[0]!

  it('is refused by a stock engine', () => {
    expect(() => new Engine().addRule(ours(new RulebookEngine(rulebook)))).toThrow(/its own engine only/)
  })

  it('is refused by another engine of ours', () => {
    expect(() => new RulebookEngine(rulebook).addRule(ours(new RulebookEngine(rulebook)))).toThrow(/plain object/)
  })

  it('is refused by another copy of the package', () => {
    expect(() => new foreign.Engine().addRule(ours(new RulebookEngine(rulebook)))).toThrow(/its own engine only/)
  })
})

describe('trap 5: the order of results', () => {
  it('does not depend on who answers first', async () => {
    const late = async (): Promise<string> => {
      for (let wait = 0; wait < 50; wait++) await Promise.resolve()
      return 'gas'
    }
    const hostRules: readonly HostRule[] = [
      { ...asking('host.late'), name: 'shop/a' },
      { ...plain, name: 'shop/b' },
    ]
    const { report, host } = await checkInEngine(pair, rulebook, { hostFacts: { 'host.late': late }, hostRules })
    expect(host.map(({ rule, subject }) => `${rule} ${subject}`)).toEqual([
      'shop/a K1',
      'shop/a K2',
      'shop/b K1',
      'shop/b K2',
    ])
    expect(JSON.stringify(report)).toBe(JSON.stringify(alone))
  })
})

describe('trap 6: a verdict that cannot be told', () => {
  it('is told among the failures, and a pass among the successes', async () => {
    const engine = new RulebookEngine(rulebook)
    const heard = { success: new Set<unknown>(), failure: new Set<unknown>() }
    engine.on('success', (event) => heard.success.add(event.params?.verdict))
    engine.on('failure', (event) => heard.failure.add(event.params?.verdict))
    await engine.check(manyThings(6))
    expect([...heard.success].sort()).toEqual(['not-applicable', 'pass'])
    expect([...heard.failure].sort()).toEqual(['broken', 'fail', 'undecided'])
  })

  it('is a failure of the host too, though the stock engine would let it pass', async () => {
    const other: HostRule = {
      ...plain,
      conditions: { all: [{ fact: 'kettle.limit', operator: 'notEqual', value: 3 }] },
    }
    const events: string[] = []
    const engine = new RulebookEngine(rulebook, { hostRules: [other] })
    engine.on('gas-kettle', (_, __, result) => events.push(`${result.name} ${String(result.result)}`))
    const { host } = await engine.check(pair)
    expect(host.map(({ subject, result }) => `${subject} ${result}`)).toEqual(['K1 holds', 'K2 cannot be told'])
    expect(events).toEqual(['shop/fuel true'])
  })
})

describe('trap 7: a path', () => {
  it('is refused in conditions, in values and in named conditions', () => {
    const leaf = { fact: 'kettle.fuel', operator: 'equal', value: 'gas' }
    const withPath = [
      { ...leaf, path: '$.x' },
      { ...leaf, value: { fact: 'kettle.fuel', path: '$.x' } },
    ]
    for (const one of withPath) {
      expect(() => new RulebookEngine(rulebook, { hostRules: [{ ...plain, conditions: { all: [one] } }] })).toThrow(
        /"path" has no place/,
      )
      expect(() => new RulebookEngine(rulebook, { hostConditions: { one: { all: [one] } } })).toThrow(
        /"path" has no place/,
      )
    }
  })

  it('is never followed, not even for a fact of the host that is an object', async () => {
    const jsonPath = createRequire(createRequire(import.meta.url).resolve('json-rules-engine'))('jsonpath-plus') as {
      JSONPath: () => unknown
    }
    const followed = vi.spyOn(jsonPath, 'JSONPath')
    const hostFacts = {
      'host.object': { x: 'gas' },
      'host.reach': (_: unknown, almanac: { factValue: (name: string, params: object, path: string) => unknown }) =>
        almanac.factValue('host.object', {}, '$.x'),
    }
    const { faults, host } = await checkInEngine(pair, rulebook, {
      hostFacts,
      hostRules: [asking('host.reach'), { ...asking('host.object'), name: 'shop/object' }],
    })
    expect(host.map(({ rule }) => rule)).toEqual(['shop/object', 'shop/object'])
    expect(faults).toMatchObject([{ message: '"host.object" is asked by its own name, without a path' }, {}])
    expect(followed).toHaveBeenCalledTimes(0)
    await new Engine([
      { conditions: { all: [{ fact: 'x', path: '$.y', operator: 'equal', value: 1 }] }, event: { type: 'x' } },
    ]).run({ x: { y: 1 } })
    expect(followed).toHaveBeenCalledTimes(1)
    followed.mockRestore()
  })
})

describe('trap 8: an unknown operator', () => {
  it('is an error at load, with place and nearest name', () => {
    expect(() => new RulebookEngine(rulebook, { hostRules: [asking('kettle.fuel', 'equals')] })).toThrow(
      expect.objectContaining({
        problems: [
          expect.objectContaining({
            code: 'unknown-operator',
            pointer: '/conditions/all/0/operator',
            nearest: 'equal',
            file: 'rule shop/fuel',
          }),
        ],
      }) as Error,
    )
  })

  it('is known when it is decorated or the host brings it', () => {
    const same = new Operator<string, string>('same', (a, b) => a === b)
    const engine = new RulebookEngine(rulebook)
    engine.addOperator(same)
    engine.addOperatorDecorator(
      new OperatorDecorator<string, string, string, string>('loud', (a, b, next) =>
        next(a.toUpperCase(), b.toUpperCase()),
      ),
    )
    expect(() => engine.addRule(asking('kettle.fuel', 'loud:same'))).not.toThrow()
    expect(() => engine.addRule({ ...asking('kettle.fuel', 'loudd:same'), name: 'other' })).toThrow(
      /no operator "loudd:same"/,
    )
  })
})

describe('trap 9: a result as JSON', () => {
  it('is an object, alone and in a list', async () => {
    const engine = new RulebookEngine(rulebook, { hostRules: [plain] })
    const texts: string[] = []
    engine.on('success', (_, __, result) => texts.push(JSON.stringify(result), JSON.stringify([result])))
    const { host } = await engine.check(pair)
    const parsed = texts.map((text): unknown => JSON.parse(text))
    expect(parsed).toContainEqual(expect.objectContaining({ name: 'kettle/fuel', result: true }))
    expect(parsed).toContainEqual([expect.objectContaining({ name: 'shop/fuel', result: true })])
    expect(JSON.parse(JSON.stringify(host))).toEqual(host)
  })
})

describe('trap 10: handlers of a rule', () => {
  it('are called for what holds and for what does not', async () => {
    const heard: string[] = []
    const handled: HostRule = {
      ...plain,
      onSuccess: (_, __, result) => void heard.push(`success ${result.name}`),
      onFailure: () => void heard.push('failure'),
    }
    await checkInEngine(pair, rulebook, { hostRules: [handled] })
    expect(heard.sort()).toEqual(['failure', 'success shop/fuel'])
  })
})

describe('trap 11: an event called error', () => {
  it('is like any other, heard or not', async () => {
    const engine = new RulebookEngine(rulebook, { hostRules: [{ ...plain, event: { type: 'error' } }] })
    expect((await engine.check(pair)).faults).toEqual([])
    const heard: string[] = []
    engine.on('error', (_, __, result) => heard.push(result.name))
    const { report, faults } = await engine.check(pair)
    expect([report, faults, heard]).toEqual([alone, [], ['shop/fuel']])
  })
})

describe('trap 13: frozen rules', () => {
  it('are taken, priorities and all, and keep their names', async () => {
    const leaf = Object.freeze({ fact: 'kettle.fuel', operator: 'equal', value: 'gas', priority: 3 })
    const frozen: HostRule = Object.freeze({ ...plain, conditions: Object.freeze({ all: Object.freeze([leaf]) }) })
    const { host, faults } = await checkInEngine(pair, rulebook, { hostRules: [frozen] })
    expect(faults).toEqual([])
    expect(host.map(({ rule }) => rule)).toEqual(['shop/fuel', 'shop/fuel'])
  })

  it('ours keep theirs', () => {
    const { rules } = new RulebookEngine(rulebook) as unknown as { rules: readonly Rule[] }
    expect(rules.map(({ name }) => name)).toEqual(rulebook.rules.map(({ id }) => id))
  })
})

describe('trap 15: two copies of the package', () => {
  it('is put to the test by a copy that is another one', () => {
    expect(foreign.Engine).not.toBe(Engine)
  })

  it('an instance of the other copy is refused with a clear error', () => {
    const engine = new RulebookEngine(rulebook)
    const add: readonly (() => unknown)[] = [
      () => engine.addFact(new foreign.Fact('x', 1)),
      () => engine.addOperator(new foreign.Operator('x', () => true)),
      () => engine.addOperatorDecorator(new foreign.OperatorDecorator('x', () => true)),
    ]
    for (const one of add) expect(one).toThrow(/another copy of json-rules-engine/)
    expect(() => engine.addRule(new foreign.Rule({ ...plain, conditions: { all: [] } }))).toThrow(/plain object/)
  })

  it('an instance of ours is taken', async () => {
    const engine = new RulebookEngine(rulebook)
    engine.addFact(new Fact('host.fuel', 'gas'))
    engine.addRule(asking('host.fuel'))
    expect((await engine.check(pair)).host.map(({ result }) => result)).toEqual(['holds', 'holds'])
  })
})

describe('trap 17: a name twice', () => {
  it('is refused among the rules of the host and against ours', () => {
    expect(() => new RulebookEngine(rulebook, { hostRules: [plain, plain] })).toThrow(
      /There is a rule "shop\/fuel" already/,
    )
    expect(() => new RulebookEngine(rulebook, { hostRules: [{ ...plain, name: 'kettle/fuel' }] })).toThrow(/already/)
  })

  it('the number of verdicts is that of a check without the engine', async () => {
    const told: string[] = []
    await checkInEngine(pair, rulebook, { onEvent: ({ rule, subject }) => told.push(`${rule} ${subject}`) })
    expect([told.length, new Set(told).size]).toEqual([verdicts, verdicts])
  })
})
