import { Rule } from 'json-rules-engine'
import { describe, expect, it } from 'vitest'
import { checkInEngine, RulebookEngine, type EngineEvent, type HostRule } from '../../src/engine/index.js'
import { behindItsBack } from './host.js'
import { pair, rulebook, written } from './workshop.js'

const psi = 6894.757293168361 // one pound of force on a square inch, in pascal: 0.45359237 kg x 9.80665 m/s2 / (0.0254 m)2

const lowLimit: HostRule = {
  name: 'shop/low-limit',
  of: 'kettle',
  conditions: { all: [{ fact: 'kettle.limit', operator: 'lessThan', value: 31 * psi }] },
  event: { type: 'low-limit', params: { desk: 'front' } },
}

describe('a rule of the host', () => {
  it('is asked of every listed thing of its kind, over the facts of the rulebook', async () => {
    const { host } = await checkInEngine(pair, rulebook, { hostRules: [lowLimit] })
    expect(host.map(({ rule, subject, result }) => [rule, subject, result])).toEqual([
      ['shop/low-limit', 'K1', 'holds'],
      ['shop/low-limit', 'K2', 'cannot be told'],
    ])
    expect(host[0]?.event).toEqual({ type: 'low-limit', params: { desk: 'front' } })
    expect(host[0]?.conditions.all?.[0]?.factResult).toBeCloseTo(30 * psi, 6)
  })

  it('reaches one step along a reference, counts and singletons', async () => {
    const reach: HostRule = {
      name: 'shop/reach',
      of: 'valve',
      conditions: {
        all: [
          { fact: 'valve.kettle.fuel', operator: 'equal', value: 'gas' },
          { fact: 'valve.kettle.valves', operator: 'equal', value: 1 },
          { not: { fact: 'valve.kettle.soundness', operator: 'equal', value: 'cracked' } },
        ],
      },
      event: { type: 'reached' },
    }
    const { host, faults } = await checkInEngine(pair, rulebook, { hostRules: [reach] })
    expect(faults).toEqual([])
    expect(host).toMatchObject([{ subject: 'V1', result: 'holds' }])
  })

  it('sees what is stated and nothing that is assumed, its own or across a reference', async () => {
    const document = written({
      components: [
        { id: 'K1', kind: 'kettle', limit: { value: '20 psi', standing: 'assumed' } },
        { id: 'V1', kind: 'valve', kettle: 'K1' },
      ],
    })
    const across: HostRule = {
      ...lowLimit,
      name: 'shop/across',
      of: 'valve',
      conditions: { all: [{ fact: 'valve.kettle.limit', operator: 'lessThan', value: 31 * psi }] },
    }
    const { host } = await checkInEngine(document, rulebook, { hostRules: [lowLimit, across] })
    expect(host).toMatchObject([
      { subject: 'K1', result: 'cannot be told' },
      { subject: 'V1', result: 'cannot be told' },
    ])
  })

  it('uses facts, operators and named conditions of the host', async () => {
    const { host, faults } = await checkInEngine(pair, rulebook, {
      hostFacts: {
        'shop.open': 'yes',
        'shop.twice': async (_: unknown, almanac: { factValue: (name: string) => Promise<number | undefined> }) => {
          const limit = await almanac.factValue('kettle.limit')
          return limit === undefined ? undefined : 2 * limit
        },
      },
      hostOperators: { near: (a: number, b: number) => Math.abs(a - b) < psi },
      hostConditions: { open: { all: [{ fact: 'shop.open', operator: 'equal', value: 'yes' }] } },
      hostRules: [
        {
          ...lowLimit,
          conditions: { all: [{ condition: 'open' }, { fact: 'shop.twice', operator: 'near', value: 60 * psi }] },
        },
      ],
    })
    expect(faults).toEqual([])
    expect(host.map(({ result }) => result)).toEqual(['holds', 'cannot be told'])
  })

  it('is told with every verdict to whoever listens', async () => {
    const told: EngineEvent[] = []
    await checkInEngine(pair, rulebook, { hostRules: [lowLimit], onEvent: (event) => told.push(event) })
    expect(told).toContainEqual({
      type: 'low-limit',
      rule: 'shop/low-limit',
      subject: 'K1',
      holds: true,
      params: { desk: 'front' },
    })
    expect(told).toContainEqual({
      type: 'verdict',
      rule: 'valve/within-limit',
      subject: 'V1',
      holds: false,
      params: { rule: 'valve/within-limit', subject: 'V1', verdict: 'fail', severity: 'must' },
    })
  })

  it('calls the listeners of an engine with event, almanac and result, and its own handlers', async () => {
    const heard: unknown[] = []
    const engine = new RulebookEngine(rulebook, {
      hostRules: [
        {
          ...lowLimit,
          onSuccess: (event) => heard.push(['own', event.type]),
          onFailure: () => heard.push(['own failure']),
        },
      ],
    })
    const fuels: Promise<unknown>[] = []
    engine.on('low-limit', (params, almanac, result) => {
      fuels.push(almanac.factValue('kettle.fuel'))
      heard.push(['type', params, result.name, result.result])
    })
    engine.on('failure', (event, _, result) => {
      if (result.name === 'shop/low-limit') heard.push(['failure', event.type])
    })
    await engine.check(pair)
    expect(heard).toContainEqual(['own', 'low-limit'])
    expect(heard).toContainEqual(['type', { desk: 'front' }, 'shop/low-limit', true])
    expect(await Promise.all(fuels)).toEqual(['gas'])
    expect(heard).toContainEqual(['own failure'])
    expect(heard).toContainEqual(['failure', 'low-limit'])
  })
})

describe('a rule of the host that cannot stand beside ours', () => {
  const leaf = { fact: 'kettle.limit', operator: 'lessThan', value: 1 }
  const refused: readonly (readonly [string, unknown, object])[] = [
    [
      'a fact nobody knows',
      { ...lowLimit, conditions: { all: [{ ...leaf, fact: 'kettle.limmit' }] } },
      { code: 'unknown-fact', pointer: '/conditions/all/0/fact', nearest: 'kettle.limit' },
    ],
    ['a kind nobody knows', { ...lowLimit, of: 'kettel' }, { code: 'unknown-kind', nearest: 'kettle' }],
    [
      'a quantity compared with text',
      { ...lowLimit, conditions: { all: [{ ...leaf, value: '30 psi' }] } },
      { code: 'wrong-unit', nearest: expect.stringMatching(/^20684[23]/) as string },
    ],
    [
      'a word that is no choice',
      { ...lowLimit, conditions: { all: [{ fact: 'kettle.fuel', operator: 'in', value: ['gass'] }] } },
      { code: 'not-a-choice', nearest: 'gas' },
    ],
    ['an empty group', { ...lowLimit, conditions: { any: [] } }, { code: 'bad-condition', pointer: '/conditions/any' }],
    ['two groups in one map', { ...lowLimit, conditions: { any: [leaf], all: [leaf] } }, { code: 'two-keys' }],
    [
      'parameters for a fact of ours',
      { ...lowLimit, conditions: { all: [{ ...leaf, params: {} }] } },
      { code: 'refused-key', pointer: '/conditions/all/0/params' },
    ],
    ['an unknown key', { ...lowLimit, prioritty: 3 }, { code: 'unknown-key', nearest: 'priority' }],
    ['a priority that is no rank', { ...lowLimit, priority: -1 }, { code: 'bad-value', pointer: '/priority' }],
    ['no event', { ...lowLimit, event: {} }, { code: 'bad-event' }],
    ['the event of our rules', { ...lowLimit, event: { type: 'verdict' } }, { code: 'bad-event' }],
    ['no name', { ...lowLimit, name: '' }, { code: 'missing-key', pointer: '/name' }],
    ['no conditions', { ...lowLimit, conditions: undefined }, { code: 'bad-condition' }],
    [
      'no value',
      { ...lowLimit, conditions: { all: [{ fact: 'kettle.limit', operator: 'lessThan' }] } },
      { code: 'missing-key' },
    ],
  ]

  it.each(refused)('is refused for %s', (_, rule, problem) => {
    expect(() => new RulebookEngine(rulebook, { hostRules: [rule as HostRule] })).toThrow(
      expect.objectContaining({
        code: 'unusable-host-content',
        problems: expect.arrayContaining([expect.objectContaining(problem)]) as unknown,
      }) as Error,
    )
  })

  it('is told with every mistake at once', () => {
    const rule = {
      ...lowLimit,
      of: 'kettel',
      name: '',
      event: {},
      conditions: { all: [{ ...leaf, operator: 'lesThan' }] },
    }
    const thrown = catching(() => new RulebookEngine(rulebook, { hostRules: [rule as unknown as HostRule] }))
    expect(thrown).toMatchObject({
      problems: [
        { code: 'missing-key' },
        { code: 'unknown-kind' },
        { code: 'bad-event' },
        { code: 'unknown-operator', nearest: 'lessThan' },
      ],
    })
  })

  it('cannot have a fact that the document gives', () => {
    expect(() => new RulebookEngine(rulebook, { hostFacts: { 'kettle.limit': 3 } })).toThrow(
      /comes from the document only/,
    )
  })

  it('cannot take a rule of the rulebook out, stop a check or run without a document', async () => {
    const engine = new RulebookEngine(rulebook)
    expect(() => engine.removeRule('kettle/fuel')).toThrow(/belongs to the rulebook/)
    expect(() => engine.updateRule()).toThrow(/removeRule/)
    expect(() => engine.stop()).toThrow(/runs to its end/)
    await expect(engine.run()).rejects.toThrow(/check\(\)/)
  })

  it('can be taken out again', async () => {
    const engine = new RulebookEngine(rulebook, { hostRules: [lowLimit] })
    expect(engine.removeRule('shop/low-limit')).toBe(true)
    expect((await engine.check(pair)).host).toEqual([])
  })

  it('is not asked at all when it slips in as an instance', async () => {
    const engine = new RulebookEngine(rulebook)
    const stray = new Rule({
      name: 'stray',
      conditions: { all: [{ fact: 'kettle.fuel', operator: 'equal', value: 'gas' }] },
      event: { type: 'stray' },
    })
    behindItsBack(engine, 'addRule', [stray])
    const { faults, report } = await engine.check(pair)
    expect(faults).toMatchObject([{ at: 'rule', rule: 'stray' }])
    expect(report.tally.asked).toBeGreaterThan(0)
  })
})

function catching(act: () => unknown): unknown {
  try {
    act()
  } catch (reason) {
    return reason
  }
  return undefined
}
