import { describe, expect, it } from 'vitest'
import type { Thing } from '../../src/model/index.js'
import { reachesWithout, type Told } from '../../src/network/index.js'
import { networkOf, part, run, type Part, type Run } from './build.js'
import { isIronDrain, isKind, reliefFrom, water } from './questions.js'

const boiler = part('B1', 'boiler', { capped: ['supply', 'return', 'condensate'] })
const house = (parts: readonly Part[], runs: readonly Run[]) =>
  networkOf({ parts: [boiler, part('RV1', 'relief'), ...parts], runs })
const reliefRun = (path: string): Run => run('L-relief', path)

describe('the way from the boiler to its relief valve', () => {
  it('is free where the valve stands on the tapping', () => {
    expect(reliefFrom(house([], [reliefRun('B1.relief RV1.inlet')]))).toMatchObject({
      truth: 1,
      witness: ['B1.relief', 'RV1.inlet'],
      missing: [],
    })
  })

  it('is blocked by a valve that can be shut, and the whole way is shown', () => {
    const network = house(
      [part('ISO1', 'stopValve', { values: { locked: 'no' } })],
      [reliefRun('B1.relief ISO1 RV1.inlet')],
    )
    expect(reliefFrom(network)).toMatchObject({
      truth: -1,
      witness: ['B1.relief', 'ISO1', 'RV1.inlet'],
      blockedBy: 'ISO1',
      missing: [],
    })
  })

  it('is free through a valve locked open', () => {
    const network = house(
      [part('ISO1', 'stopValve', { values: { locked: 'open' } })],
      [reliefRun('B1.relief ISO1 RV1.inlet')],
    )
    expect(reliefFrom(network)).toMatchObject({ truth: 1, witness: ['B1.relief', 'ISO1', 'RV1.inlet'] })
  })

  it('waits for the lock where nobody said', () => {
    const network = house([part('ISO1', 'stopValve')], [reliefRun('B1.relief ISO1 RV1.inlet')])
    expect(reliefFrom(network)).toMatchObject({
      truth: 0,
      witness: ['B1.relief', 'ISO1', 'RV1.inlet'],
      missing: [{ subject: 'ISO1', fact: 'locked' }],
    })
  })

  it.each([
    ['checkValve', { checking: true }, 'CV1'],
    ['strainer', { restricting: true }, 'CV1'],
    ['zoneValve', { closing: true }, 'CV1'],
  ] as const)('is blocked by a %s only where that is asked', (kind, barriers, blockedBy) => {
    const network = house([part('CV1', kind)], [reliefRun('B1.relief CV1 RV1.inlet')])
    expect(reliefFrom(network, barriers)).toMatchObject({ truth: -1, blockedBy })
    expect(reliefFrom(network, {}).truth).toBe(1)
  })

  it('runs backwards through a check all the same', () => {
    const network = house([part('CV1', 'checkValve')], [reliefRun('B1.relief CV1.out-in RV1.inlet')])
    expect(reliefFrom(network, {})).toMatchObject({ truth: 1, witness: ['B1.relief', 'CV1', 'RV1.inlet'] })
    expect(reliefFrom(network, { checking: true })).toMatchObject({ truth: -1, blockedBy: 'CV1' })
  })

  it.each([
    ['yes', -1, []],
    ['no', 1, []],
    [undefined, 0, [{ subject: 'C1', fact: 'checkBuiltIn' }]],
  ] as const)('passes a pump according to its built-in check: %s', (checkBuiltIn, truth, missing) => {
    const pump = part('C1', 'pump', checkBuiltIn === undefined ? {} : { values: { checkBuiltIn } })
    expect(reliefFrom(house([pump], [reliefRun('B1.relief C1 RV1.inlet')]), { checking: true })).toMatchObject({
      truth,
      missing,
    })
  })

  it('cannot be told through an unknown piece of the path', () => {
    const network = house([], [reliefRun('B1.relief unknown RV1.inlet')])
    expect(reliefFrom(network)).toMatchObject({
      truth: 0,
      witness: ['B1.relief', 'unknown'],
      missing: [{ subject: 'L-relief', fact: 'path' }],
    })
    expect(reliefFrom(network, { allListed: true }).witness).toEqual(['B1.relief', 'unknown', 'RV1.inlet'])
  })

  it('is no longer asked of what lies behind a valve that surely closes', () => {
    const shut = part('ISO1', 'zoneValve')
    expect(reliefFrom(house([shut], [reliefRun('B1.relief ISO1 unknown RV1.inlet')]))).toMatchObject({
      truth: -1,
      witness: [],
      missing: [],
    })
  })

  it('leaves out open questions that no relief valve lies behind', () => {
    const parts = [
      part('T1', 'tee'),
      part('ISO1', 'stopValve'),
      part('ISO2', 'stopValve'),
      part('D1', 'coupling', { capped: ['b'] }),
    ]
    const runs = [reliefRun('B1.relief T1 ISO1 RV1.inlet'), run('L-dead', 'T1.branch ISO2 D1.a')]
    expect(reliefFrom(house(parts, runs)).missing).toEqual([{ subject: 'ISO1', fact: 'locked' }])
  })

  it('is told of the tapping itself where one port is asked', () => {
    const parts = [part('B1', 'boiler', { capped: ['relief', 'return', 'condensate'] }), part('RV1', 'relief')]
    const network = networkOf({ parts, runs: [run('L', 'B1.supply RV1.inlet')] })
    const answer = reachesWithout(network, { component: 'B1', port: 'relief' }, isKind('relief'))
    expect(answer).toMatchObject({ truth: 1, witness: ['B1.relief', 'B1.supply', 'RV1.inlet'] })
  })
})

describe('ports without a line', () => {
  const closed = part('RV1', 'relief', { capped: ['inlet', 'outlet'] })
  const alone = (capped?: readonly string[]) =>
    networkOf({ parts: [part('B1', 'boiler', capped === undefined ? {} : { capped }), closed], runs: [] })

  it('lead nowhere when capped', () => {
    expect(reliefFrom(alone(['supply', 'return', 'relief']))).toMatchObject({ truth: -1, witness: [], missing: [] })
  })

  it('may lead anywhere when open', () => {
    expect(reliefFrom(alone(['return', 'relief']))).toMatchObject({
      truth: 0,
      witness: ['B1.supply', 'unknown'],
      missing: [{ subject: 'B1', fact: 'supply' }],
    })
  })

  it('may lead anywhere when the list of capped ones is not whole, or not given', () => {
    const rest = [
      { subject: 'B1', fact: 'return' },
      { subject: 'B1', fact: 'relief' },
    ]
    expect(reliefFrom(alone(['supply', 'unknown']))).toMatchObject({ truth: 0, missing: rest })
    expect(reliefFrom(alone()).missing).toHaveLength(3)
  })

  it('lead to no relief valve when all of them are listed and closed off', () => {
    expect(reliefFrom(alone(['return', 'relief']), { allListed: true }).truth).toBe(-1)
  })

  it('may lead to each other, all listed or not', () => {
    const network = networkOf({ parts: [part('B1', 'boiler'), part('RV1', 'relief')], runs: [] })
    expect(reliefFrom(network, { allListed: true })).toMatchObject({
      truth: 0,
      witness: ['B1.supply', 'unknown', 'RV1.inlet'],
    })
  })

  it('lead into their own medium only, unless an unlisted thing may join two', () => {
    const parts = [part('B1', 'boiler'), part('S1', 'service', { capped: ['out'] }), part('PT1', 'potableTee')]
    const toTee = (counts: Readonly<Record<string, number>>) =>
      reachesWithout(networkOf({ parts, runs: [], counts }), water, isKind('potableTee'), { allListed: true })
    expect(toTee({ backflow: 0, coupling: 0 }).truth).toBe(-1)
    expect(toTee({ backflow: 0 }).truth).toBe(0)
    expect(toTee({ all: 3 }).truth).toBe(-1)
    expect(toTee({}).truth).toBe(0)
    expect(toTee({ backflow: 1, coupling: 0 }).truth).toBe(0)
  })
})

describe('rings, headers and crossings', () => {
  it('finds the other way round a ring', () => {
    const parts = [
      part('B1', 'boiler', { capped: ['supply', 'return', 'condensate'] }),
      part('T1', 'tee'),
      part('T2', 'tee'),
      part('ISO1', 'zoneValve'),
      part('K1', 'coupling'),
      part('RV1', 'relief'),
    ]
    const runs = [
      run('L1', 'B1.relief T1.a'),
      run('L2', 'T1.b ISO1 T2.a'),
      run('L3', 'T1.branch K1 T2.branch'),
      run('L4', 'T2.b RV1.inlet'),
    ]
    expect(reliefFrom(networkOf({ parts, runs }))).toMatchObject({
      truth: 1,
      witness: ['B1.relief', 'T1', 'K1', 'T2', 'RV1.inlet'],
    })
  })

  it('goes through a header from any branch to any other', () => {
    const parts = [part('H1', 'header', { values: { branches: 3 }, capped: ['main', 'branch2'] })]
    const runs = [run('L1', 'B1.relief H1.branch1'), run('L2', 'H1.branch3 RV1.inlet')]
    expect(reliefFrom(house(parts, runs))).toMatchObject({ truth: 1, witness: ['B1.relief', 'H1', 'RV1.inlet'] })
  })

  it.each([
    ['all branches settled', { branches: 2 }, -1, []],
    ['one branch not drawn', { branches: 3 }, 0, [{ subject: 'H1', fact: 'branch3' }]],
    ['a number of branches that nobody said', {}, 0, [{ subject: 'H1', fact: 'branches' }]],
  ] as const)('takes a header with %s', (_name, values, truth, missing) => {
    const parts = [
      part('H1', 'header', { values, capped: ['main', 'branch2'] }),
      part('RV1', 'relief', { capped: ['inlet'] }),
    ]
    const network = networkOf({ parts: [boiler, ...parts], runs: [run('L1', 'B1.relief H1.branch1')] })
    expect(reliefFrom(network)).toMatchObject({ truth, missing })
  })

  it('joins the branches of a manifold that has no main', () => {
    const parts = [part('M1', 'manifold', { values: { branches: 4 }, capped: ['branch2', 'branch4'] })]
    const runs = [run('L1', 'B1.relief M1.branch1'), run('L2', 'M1.branch3 RV1.inlet')]
    expect(reliefFrom(house(parts, runs))).toMatchObject({ truth: 1, witness: ['B1.relief', 'M1', 'RV1.inlet'] })
  })

  it('crosses into another medium unless that is barred', () => {
    const parts = [part('S1', 'service'), part('BF1', 'backflow')]
    const runs = [run('L1', 'S1.out BF1.in', { medium: 'potableCold' }), run('L2', 'BF1.out B1.relief')]
    const from = { component: 'S1', port: 'out' }
    expect(reachesWithout(house(parts, runs), from, isKind('boiler'))).toMatchObject({
      truth: 1,
      witness: ['S1.out', 'BF1', 'B1.relief'],
    })
    expect(reachesWithout(house(parts, runs), from, isKind('boiler'), { crossing: true })).toMatchObject({
      truth: -1,
      blockedBy: 'BF1',
    })
  })
})

describe('targets and barriers that depend on what is known', () => {
  const drain = (values: Readonly<Record<string, string>>) =>
    networkOf({
      parts: [part('B1', 'boiler'), part('D1', 'drain', { values })],
      runs: [run('L', 'B1.condensate D1.in', { medium: 'condensate' })],
    })
  const condensate = { component: 'B1', port: 'condensate' }

  it('ask for the fact that would tell the target', () => {
    expect(reachesWithout(drain({ material: 'iron' }), condensate, isIronDrain).truth).toBe(1)
    expect(reachesWithout(drain({ material: 'plastic' }), condensate, isIronDrain).truth).toBe(-1)
    expect(reachesWithout(drain({}), condensate, isIronDrain)).toMatchObject({
      truth: 0,
      missing: [{ subject: 'D1', fact: 'material' }],
    })
  })

  it('ask nothing of what surely blocks for another reason', () => {
    const pump = house([part('C1', 'pump')], [reliefRun('B1.relief C1 RV1.inlet')])
    expect(reliefFrom(pump, { checking: true, things: isKind('pump') })).toMatchObject({
      truth: -1,
      blockedBy: 'C1',
      missing: [],
    })
    const gap = house([], [reliefRun('B1.relief unknown RV1.inlet')])
    expect(reliefFrom(gap, { things: isKind('line') })).toMatchObject({ truth: -1, missing: [] })
  })

  it('ask for the target alone where the open questions beside it lead to none', () => {
    const parts = [part('T1', 'tee'), part('ISO2', 'stopValve'), part('D1', 'coupling', { capped: ['b'] })]
    const network = house(parts, [reliefRun('B1.relief T1 RV1.inlet'), run('L-dead', 'T1.branch ISO2 D1.a')])
    const ask = (id: string, port: string) => {
      const isTarget = (thing: Thing, at: string): Told =>
        thing.id === id && at === port ? { subject: id, fact: 'type' } : false
      return reachesWithout(network, water, isTarget, { closing: true })
    }
    expect(ask('RV1', 'inlet')).toMatchObject({ truth: 0, missing: [{ subject: 'RV1', fact: 'type' }] })
    expect(ask('ISO2', 'a')).toMatchObject({ truth: 0, missing: [{ subject: 'ISO2', fact: 'type' }] })
  })

  it('ask for the fact that would tell the barrier, a line included', () => {
    const copperLine = (thing: { kind: { section: string }; id: string }) =>
      thing.kind.section === 'lines' ? { subject: thing.id, fact: 'type' } : false
    const answer = reachesWithout(drain({ material: 'iron' }), condensate, isIronDrain, { things: copperLine })
    expect(answer).toMatchObject({ truth: 0, missing: [{ subject: 'L', fact: 'type' }] })
  })
})
