import { describe, expect, it } from 'vitest'
import { everyWayPasses, type Search } from '../../src/network/index.js'
import { networkOf, part, run, type House } from './build.js'
import { isKind } from './questions.js'

const condensate = { component: 'B1', port: 'condensate' }
const treated = (house: House) =>
  everyWayPasses(networkOf(house), condensate, isKind('drain'), { passes: isKind('neutralizer') })
const parts = [part('B1', 'boiler'), part('N1', 'neutralizer'), part('D1', 'drain')]
const drainRun = (path: string) => run('L-drain', path, { medium: 'condensate' })

describe('the order along the condensate line', () => {
  it('is right where the neutralizer comes before the drain', () => {
    expect(treated({ parts, runs: [drainRun('B1.condensate N1 D1.in')] })).toMatchObject({
      truth: 1,
      reached: 1,
      witness: ['B1.condensate', 'N1', 'D1.in'],
      missing: [],
    })
  })

  it('is wrong where the condensate comes past it', () => {
    const capped = [part('B1', 'boiler'), part('N1', 'neutralizer', { capped: ['in', 'out'] }), part('D1', 'drain')]
    expect(treated({ parts: capped, runs: [drainRun('B1.condensate D1.in')] })).toMatchObject({
      truth: -1,
      reached: 1,
      witness: ['B1.condensate', 'D1.in'],
    })
  })

  it('cannot be told through an unknown piece ahead of the neutralizer, nor behind it', () => {
    const ahead = treated({ parts, runs: [drainRun('B1.condensate unknown N1 D1.in')] })
    expect(ahead).toMatchObject({ truth: 0, missing: [{ subject: 'L-drain', fact: 'path' }] })
    const behind = treated({ parts, runs: [drainRun('B1.condensate N1 unknown D1.in')] })
    expect(behind).toMatchObject({ truth: 1, reached: 0, witness: [] })
  })

  it('cannot be told where no line is drawn', () => {
    expect(treated({ parts, runs: [] })).toMatchObject({
      truth: 0,
      reached: 0,
      missing: [{ subject: 'B1', fact: 'condensate' }],
    })
  })

  it('is empty where surely no drain is reached', () => {
    const capped = [part('B1', 'boiler', { capped: ['condensate'] }), ...parts.slice(1)]
    expect(treated({ parts: capped, runs: [] })).toMatchObject({ truth: 1, reached: -1, witness: [], missing: [] })
  })
})

describe('drinking water and heating water', () => {
  const service = { component: 'S1', port: 'out' }
  const guarded = [
    part('B1', 'boiler', { capped: ['supply', 'relief'] }),
    part('S1', 'service'),
    part('PT1', 'potableTee'),
    part('BF1', 'backflow'),
  ]
  const runs = [
    run('L1', 'S1.out PT1 unknown', { medium: 'potableCold' }),
    run('L2', 'PT1.branch BF1.in', { medium: 'potableCold' }),
    run('L3', 'BF1.out B1.return'),
  ]
  const everyWay = (house: House, allListed: boolean) =>
    everyWayPasses(networkOf(house), service, isKind('boiler'), { passes: isKind('backflow'), allListed })

  it('meet through the device only, where all devices and boilers are listed', () => {
    expect(everyWay({ parts: guarded, runs, counts: { backflow: 1 } }, true)).toMatchObject({
      truth: 1,
      witness: ['S1.out', 'PT1', 'BF1', 'B1.return'],
    })
  })

  it('may meet elsewhere while a boiler may stand unlisted behind the open end', () => {
    expect(everyWay({ parts: guarded, runs, counts: { backflow: 1 } }, false).missing).toEqual([
      { subject: 'L1', fact: 'path' },
    ])
  })

  it('may meet elsewhere while heating water has an open end and a device may be unlisted', () => {
    const open = [part('B1', 'boiler', { capped: ['supply'] }), ...guarded.slice(1)]
    expect(everyWay({ parts: open, runs }, true).truth).toBe(0)
    expect(everyWay({ parts: open, runs, counts: { backflow: 1, coupling: 0 } }, true).truth).toBe(1)
  })
})

describe('ways that do not count', () => {
  const parts = [
    part('B1', 'boiler', { capped: ['supply', 'return', 'condensate'] }),
    ...[part('T1', 'tee'), part('T2', 'tee'), part('ZV1', 'zoneValve'), part('C1', 'pump'), part('K1', 'coupling')],
    part('RV1', 'relief'),
  ]
  const runs = [
    run('L1', 'B1.relief T1.a'),
    run('L2', 'T1.b ZV1 T2.a'),
    run('L3', 'T1.branch C1 K1 T2.branch'),
    run('L4', 'T2.b RV1.inlet'),
  ]
  const everyWay = (search: Search) =>
    everyWayPasses(networkOf({ parts, runs }), { component: 'B1', port: 'relief' }, isKind('relief'), {
      passes: isKind('pump'),
      ...search,
    })

  it('are no way round', () => {
    expect(everyWay({})).toMatchObject({ truth: -1, witness: ['B1.relief', 'T1', 'ZV1', 'T2', 'RV1.inlet'] })
    expect(everyWay({ closing: true })).toMatchObject({
      truth: 1,
      reached: 1,
      witness: ['B1.relief', 'T1', 'C1', 'K1', 'T2', 'RV1.inlet'],
    })
  })

  it('may be ruled out by what they go through', () => {
    expect(everyWay({ things: isKind('zoneValve') })).toMatchObject({ truth: 1, reached: 1 })
  })
})
