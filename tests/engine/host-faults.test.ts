import { describe, expect, it } from 'vitest'
import {
  checkInEngine,
  RulebookEngine,
  type EngineCheckOptions,
  type HostContent,
  type HostRule,
} from '../../src/engine/index.js'
import { checkInstallation } from '../../src/index.js'
import { alone, asking, behindItsBack, fail, plain, sound } from './host.js'
import { manyThings, pair, rulebook } from './workshop.js'

describe('trap 4: whatever of the host fails', () => {
  const unprintable = Object.defineProperty(new Error(), 'message', { get: fail })
  const failures: readonly (readonly [string, EngineCheckOptions & HostContent, object])[] = [
    [
      'a fact',
      { hostRules: [asking('host.broken')], hostFacts: { 'host.broken': fail } },
      { at: 'rule', rule: 'shop/fuel', message: 'the host fell over' },
    ],
    [
      'a fact that rejects',
      {
        hostRules: [asking('host.broken')],
        hostFacts: { 'host.broken': () => Promise.reject(new Error('the host fell over')) },
      },
      { at: 'rule', message: 'the host fell over' },
    ],
    [
      'a fact that throws what cannot be printed',
      { hostRules: [asking('host.broken')], hostFacts: { 'host.broken': () => Promise.reject(unprintable) } },
      { at: 'rule', message: 'something that cannot be printed' },
    ],
    [
      'a fact that asks for what is not there',
      {
        hostRules: [asking('host.broken')],
        hostFacts: {
          'host.broken': (_: unknown, almanac: { factValue: (name: string) => unknown }) =>
            almanac.factValue('kettle.limmit'),
        },
      },
      { at: 'rule', message: expect.stringContaining('kettle.limit') as string },
    ],
    [
      'an operator',
      { hostRules: [asking('kettle.fuel', 'broken')], hostOperators: { broken: fail } },
      { at: 'rule', message: 'the host fell over' },
    ],
    [
      'a named condition that nobody gave',
      { hostRules: [{ ...plain, conditions: { condition: 'lost' } }] },
      { at: 'rule', message: expect.stringContaining('lost') as string },
    ],
    [
      'a handler of a rule',
      { hostRules: [{ ...plain, onSuccess: fail, onFailure: fail }] },
      { at: 'listener', rule: 'shop/fuel', event: 'gas-kettle', message: 'the host fell over' },
    ],
    ['whoever listens', { onEvent: fail }, { at: 'listener', event: 'verdict', message: 'the host fell over' }],
    [
      'whoever listens and rejects',
      { onEvent: () => Promise.reject(new Error('the host fell over')) },
      { at: 'listener', event: 'verdict', message: 'the host fell over' },
    ],
    [
      'a fact of ours that throws',
      { hostRules: [sound] },
      { at: 'rule', subject: 'Broken0', message: 'the gauge fell off' },
    ],
  ]

  it.each(failures)('%s: our verdicts are complete, the fault is told, twice over', async (_, options, fault) => {
    const document = manyThings(6)
    const engine = new RulebookEngine(rulebook, options)
    for (let run = 0; run < 2; run++) {
      const { report, faults } = await engine.check(document, options)
      expect(report).toEqual(checkInstallation(document, rulebook))
      expect(faults).toContainEqual(expect.objectContaining(fault))
    }
  })

  it('a listener that throws keeps nothing from the next one', async () => {
    const engine = new RulebookEngine(rulebook, { hostRules: [plain] })
    const heard: string[] = []
    engine.on('gas-kettle', fail)
    engine.on('gas-kettle', () => heard.push('second'))
    const { faults, host } = await engine.check(pair)
    expect([heard, host.length]).toEqual([['second'], 2])
    expect(faults).toEqual([
      { at: 'listener', rule: 'shop/fuel', subject: 'K1', event: 'gas-kettle', message: 'the host fell over' },
    ])
  })

  it('what goes wrong with one thing leaves the others', async () => {
    const { host, faults } = await checkInEngine(manyThings(6), rulebook, { hostRules: [sound] })
    expect(host.map(({ subject, result }) => `${subject} ${result}`)).toEqual(['K1 holds', 'K2 holds'])
    expect(faults).toMatchObject([{ subject: 'Broken0' }])
  })

  it('a listener that calls stop() stops nothing', async () => {
    const engine = new RulebookEngine(rulebook, { hostRules: [{ ...plain, priority: 9 }] })
    engine.on('gas-kettle', () => engine.stop())
    const { report, host, faults } = await engine.check(pair)
    expect([report, host.length]).toEqual([alone, 2])
    expect(faults).toMatchObject([{ at: 'listener', message: expect.stringContaining('runs to its end') as string }])
  })

  it('rules of ours that are taken out behind its back are judged all the same', async () => {
    const engine = new RulebookEngine(rulebook)
    behindItsBack(engine, 'removeRule', ['kettle/fuel'])
    expect((await engine.check(pair)).report).toEqual(alone)
  })

  it('what never answers ends with the signal, and the report is whole', async () => {
    const patience = new AbortController()
    const hostFacts = {
      'host.silent': () => {
        patience.abort()
        return new Promise(() => undefined)
      },
    }
    const hostRules: readonly HostRule[] = [
      { ...asking('host.silent'), priority: 9 },
      { ...plain, name: 'shop/after' },
    ]
    const { report, host, faults } = await checkInEngine(pair, rulebook, {
      hostRules,
      hostFacts,
      signal: patience.signal,
    })
    expect(report).toEqual(alone)
    expect(host).toEqual([])
    expect(faults).toMatchObject([{ at: 'run', message: expect.stringContaining('was ended') as string }])
  })

  it('a signal that has ended before leaves the report whole', async () => {
    const { report, faults } = await checkInEngine(pair, rulebook, { signal: AbortSignal.abort() })
    expect([report, faults.length]).toEqual([alone, 1])
  })

  it('what is done to an event or a value changes nothing of ours', async () => {
    const { report } = await checkInEngine(pair, rulebook, {
      onEvent: (event) => Object.assign(event, { holds: true }),
      hostRules: [{ ...plain, onSuccess: (_, almanac) => almanac.addRuntimeFact('kettle.limit', 1) }],
    })
    expect(report).toEqual(alone)
  })
})
