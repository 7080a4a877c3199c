import { describe, expect, it } from 'vitest'
import { reachedThings, type Reached } from '../../src/network/index.js'
import { networkOf, part, run, type House } from './build.js'
import { isKind, water } from './questions.js'

const names = ({ things, lines }: Reached) => [things.map(({ id }) => id), lines.map(({ id }) => id)]
const boiler = part('B1', 'boiler', { capped: ['return', 'condensate'] })
const volume = (house: House) => reachedThings(networkOf(house), water, { closing: true, crossing: true })

describe('the volume that stays joined to the boiler', () => {
  const parts = [boiler, part('RV1', 'relief'), part('ISO1', 'zoneValve'), part('K1', 'coupling', { capped: ['b'] })]
  const runs = [run('L1', 'B1.relief RV1.inlet'), run('L2', 'B1.supply ISO1 K1.a')]

  it('ends at what closes, that thing included', () => {
    const reached = volume({ parts, runs })
    expect(names(reached)).toEqual([
      ['B1', 'ISO1', 'RV1'],
      ['L2', 'L1'],
    ])
    expect(reached).toMatchObject({ open: false, missing: [] })
  })

  it('may hold more behind a lock that nobody told', () => {
    const reached = volume({
      parts: parts.map((each) => (each.id === 'ISO1' ? part('ISO1', 'stopValve') : each)),
      runs,
    })
    expect(names(reached)[0]).toEqual(['B1', 'ISO1', 'RV1'])
    expect(reached).toMatchObject({ open: true, missing: [{ subject: 'ISO1', fact: 'locked' }] })
  })

  it('may hold more at an open end, and behind an unknown piece', () => {
    expect(volume({ parts, runs: runs.slice(0, 1) })).toMatchObject({
      open: true,
      missing: [{ subject: 'B1', fact: 'supply' }],
    })
    const gap = volume({ parts, runs: [run('L1', 'B1.relief unknown RV1.inlet'), run('L2', 'B1.supply ISO1 K1.a')] })
    expect(names(gap)).toEqual([
      ['B1', 'ISO1'],
      ['L2', 'L1'],
    ])
    expect(gap).toMatchObject({ open: true, missing: [{ subject: 'L1', fact: 'path' }] })
  })

  it('is not open for a lock between two places that are reached anyway', () => {
    const ring = [part('B1', 'boiler', { capped: ['relief', 'condensate'] }), part('ISO1', 'stopValve')]
    expect(volume({ parts: ring, runs: [run('L1', 'B1.supply ISO1 B1.return')] })).toMatchObject({
      open: false,
      missing: [],
    })
  })

  it('cannot be told from a component that is not listed', () => {
    expect(reachedThings(networkOf({ parts, runs }), { component: 'B9' })).toMatchObject({ things: [], open: true })
  })
})

describe('what condensate meets before the neutralizer', () => {
  const parts = [part('B1', 'boiler'), part('N1', 'neutralizer'), part('D1', 'drain')]
  const before = (house: House) =>
    reachedThings(networkOf(house), { component: 'B1', port: 'condensate' }, { things: isKind('neutralizer') })

  it('is the line up to it', () => {
    const runs = [
      run('L1', 'B1.condensate N1.in', { medium: 'condensate' }),
      run('L2', 'N1.out D1.in', { medium: 'condensate' }),
    ]
    const reached = before({ parts, runs })
    expect(names(reached)).toEqual([['B1', 'N1'], ['L1']])
    expect(reached.open).toBe(false)
  })

  it('is everything where there is none', () => {
    const reached = before({
      parts: [part('B1', 'boiler'), part('D1', 'drain')],
      runs: [run('L1', 'B1.condensate D1.in', { medium: 'condensate' })],
    })
    expect(names(reached)).toEqual([['B1', 'D1'], ['L1']])
  })

  it('does not count a line that is itself a barrier', () => {
    const network = networkOf({ parts, runs: [run('L1', 'B1.condensate N1 D1.in', { medium: 'condensate' })] })
    const reached = reachedThings(network, { component: 'B1', port: 'condensate' }, { things: isKind('line') })
    expect(names(reached)).toEqual([['B1'], []])
  })
})
