import { describe, expect, it } from 'vitest'
import { ask, boundsOf, missingOf, wordOf, type Written } from './asking.js'

const boilers = (list: readonly Written[], complete: Written = { boiler: String(list.length) }): Written => ({
  complete,
  components: list.map((boiler, index) => ({ id: `B${index + 1}`, kind: 'boiler', ...boiler })),
})

describe('hottest supply of the boilers', () => {
  const hottest = (document: Written) => ask(document, 'installation', 'hottestSupply')

  it('is that of the boiler which can get hottest', () => {
    const answer = hottest(boilers([{ maximumSupply: '140 F' }, { maximumSupply: '180 F' }]))
    expect(answer).toMatchObject({ state: 'number', missing: [] })
    expect(answer.state === 'number' && answer.low).toBeCloseTo(355.37, 2)
  })

  it('another boiler may be hotter', () => {
    expect(missingOf(hottest(boilers([{ maximumSupply: '140 F' }], {})))).toEqual(['boiler.count'])
    expect(hottest(boilers([])).state).toBe('unknown')
    expect(missingOf(hottest(boilers([{ maximumSupply: '140 F' }, {}])))).toEqual(['B2.maximumSupply'])
  })
})

describe('output without the largest boiler', () => {
  const left = (document: Written) => boundsOf(ask(document, 'installation', 'outputWithoutLargest'), 'heatRate')

  it('is what the smaller ones give', () => {
    expect(left(boilers([{ output: '80000 Btu/h' }, { output: '106000 Btu/h' }]))).toEqual(['80000 Btu/h'])
    expect(left(boilers([{ output: '80000 Btu/h' }]))).toEqual(['0 Btu/h'])
  })

  it('one of unknown output gives nothing for sure', () => {
    expect(left(boilers([{ output: '80000 Btu/h' }, {}]))).toEqual(['0 Btu/h', '80000 Btu/h'])
    expect(left(boilers([{ output: '80000 Btu/h' }], {}))).toEqual(['0 Btu/h', 'no upper limit'])
  })
})

describe('load that is not dropped', () => {
  const house = (zones: readonly Written[], complete: Written = { zone: String(zones.length) }): Written => ({
    complete,
    zones: zones.map((zone, index) => ({ id: `Z${index + 1}`, ...zone })),
  })
  const steady = (document: Written) => boundsOf(ask(document, 'installation', 'steadyLoad'), 'heatRate')
  const heated = { designLoad: '186000 Btu/h', priority: 'normal' }
  const snow = { designLoad: '155000 Btu/h', priority: 'shed-first' }

  it('leaves out what is dropped first', () => {
    expect(steady(house([heated, snow]))).toEqual(['186000 Btu/h'])
    expect(steady(house([heated, { ...snow, priority: 'first' }]))).toEqual(['341000 Btu/h'])
  })

  it('a zone of unknown place may stay', () => {
    const open = house([heated, { designLoad: '155000 Btu/h' }])
    expect(steady(open)).toEqual(['186000 Btu/h', '341000 Btu/h'])
    expect(missingOf(ask(open, 'installation', 'steadyLoad'))).toEqual(['Z2.priority'])
    expect(steady(house([heated], {}))).toEqual(['186000 Btu/h', 'no upper limit'])
  })
})

describe('a floor that melts snow', () => {
  const house = (zone: Written, complete: Written = { zone: '1' }): Written => ({
    complete,
    components: [{ id: 'F1', kind: 'radiantFloor' }],
    zones: [{ id: 'Z1', ...zone }],
  })
  const melts = (document: Written) => ask(document, 'F1', 'meltsSnow')

  it('is fed by a zone for it', () => {
    expect(wordOf(melts(house({ use: 'snow-melt', emitters: ['F1'] })))).toBe('yes')
    expect(wordOf(melts(house({ use: 'heating', emitters: ['F1'] })))).toBe('no')
    expect(wordOf(melts(house({ use: 'snow-melt', emitters: [] })))).toBe('no')
  })

  it('a zone that may feed it, or may be for it, leaves it open', () => {
    expect(missingOf(melts(house({ use: 'snow-melt' })))).toEqual(['Z1.emitters'])
    expect(missingOf(melts(house({ emitters: ['F1'] })))).toEqual(['Z1.use'])
    expect(missingOf(melts(house({ use: 'heating', emitters: ['F1'] }, {})))).toEqual(['zone.count'])
  })
})

describe('voltage lost to a zone valve', () => {
  const loss = (valve: Written) => ask({ components: [{ id: 'ZV1', kind: 'zoneValve', ...valve }] }, 'ZV1', 'wireLoss')
  const valve = { power: '21.6 VA', voltage: '24 V', wireLength: '100 ft', wireGauge: '18' }

  it('100 ft of 18 AWG lose some 1.4 V at 0.9 A when warm', () => {
    const answer = loss(valve)
    expect(answer.state === 'number' && answer.low).toBeCloseTo(1.4, 1)
  })

  it('is open while anything of it is', () => {
    expect(missingOf(loss({ ...valve, wireGauge: 'unknown' }))).toEqual(['ZV1.wireGauge'])
    expect(loss({ ...valve, voltage: '0 V' }).state).toBe('unknown')
  })
})

describe('tapping for a relief valve', () => {
  const house: Written = {
    components: [
      { id: 'B1', kind: 'boiler', reliefTapping: '3/4' },
      { id: 'T1', kind: 'indirectTank' },
      { id: 'RV1', kind: 'reliefValve', protects: 'B1' },
      { id: 'RV2', kind: 'reliefValve', protects: 'T1' },
      { id: 'RV3', kind: 'reliefValve' },
    ],
  }

  it('is that of its boiler', () => {
    expect(ask(house, 'RV1', 'tapping').state).toBe('number')
    expect(missingOf(ask(house, 'RV2', 'tapping'))).toEqual(['T1.reliefTapping'])
    expect(missingOf(ask(house, 'RV3', 'tapping'))).toEqual(['RV3.protects'])
  })
})
