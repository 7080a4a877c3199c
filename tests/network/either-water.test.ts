import { describe, expect, it } from 'vitest'
import { everyWayPasses, isConnected, reachedThings, reachesWithout } from '../../src/network/index.js'
import { networkOf, part, run } from './build.js'
import { isKind } from './questions.js'

const service = { component: 'S1', port: 'out' }
const counts = { backflow: 0, coupling: 1 }
const boiler = part('B1', 'boiler', { capped: ['supply', 'relief', 'condensate'] })

describe('ports that suit heating water and drinking water', () => {
  it('take the medium of their line', () => {
    const parts = [part('S1', 'service'), part('RV1', 'relief')]
    const network = networkOf({ parts, runs: [run('L1', 'S1.out RV1.inlet', { medium: 'potableCold' })] })
    expect(reachesWithout(network, service, isKind('relief'))).toMatchObject({
      truth: 1,
      witness: ['S1.out', 'RV1.inlet'],
    })
    expect(reachedThings(network, { component: 'RV1', medium: 'potableHot' }).things.map(({ id }) => id)).toEqual([
      'RV1',
      'S1',
    ])
    expect(reachedThings(network, { component: 'RV1', medium: 'heatingWater' })).toMatchObject({
      things: [],
      open: false,
    })
  })

  it('may stand in either where no line is drawn, but join the two nowhere', () => {
    const network = networkOf({
      parts: [boiler, part('S1', 'service'), part('RV1', 'relief')],
      runs: [],
      counts: { ...counts, coupling: 0 },
    })
    expect(reachesWithout(network, service, isKind('relief'), { allListed: true })).toMatchObject({
      truth: 0,
      witness: ['S1.out', 'unknown', 'RV1.inlet'],
    })
    expect(
      reachesWithout(network, { component: 'B1', port: 'return' }, isKind('relief'), { allListed: true }).truth,
    ).toBe(0)
    expect(reachesWithout(network, service, isKind('boiler'), { allListed: true }).truth).toBe(-1)
    expect(isConnected(network, { component: 'RV1', port: 'inlet' }).missing).toEqual([
      { subject: 'RV1', fact: 'inlet' },
    ])
  })

  it('show a fitting that joins both waters', () => {
    const parts = [boiler, part('S1', 'service'), part('K1', 'coupling')]
    const runs = [run('L1', 'S1.out K1.a', { medium: 'potableCold' }), run('L2', 'K1.b B1.return')]
    const network = networkOf({ parts, runs, counts })
    expect(everyWayPasses(network, service, isKind('boiler'), { passes: isKind('backflow') })).toMatchObject({
      truth: -1,
      witness: ['S1.out', 'K1', 'B1.return'],
    })
    expect(reachesWithout(network, service, isKind('boiler'), { crossing: true })).toMatchObject({
      truth: -1,
      blockedBy: 'K1',
    })
  })

  it('leave open whether a fitting joins both while one side is not drawn, or while it may be unlisted', () => {
    const parts = [boiler, part('S1', 'service'), part('K1', 'coupling')]
    const runs = [run('L1', 'S1.out K1.a', { medium: 'potableCold' })]
    const ask = (house: Parameters<typeof networkOf>[0]) =>
      reachesWithout(networkOf(house), service, isKind('boiler'), { allListed: true }).truth
    expect(ask({ parts, runs, counts })).toBe(0)
    expect(ask({ parts: parts.slice(0, 2), runs: [], counts })).toBe(0)
    expect(ask({ parts: parts.slice(0, 2), runs: [], counts: { backflow: 0, coupling: 0 } })).toBe(-1)
  })
})
