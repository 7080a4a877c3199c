import { describe, expect, it } from 'vitest'
import { printQuantity } from '../../src/units/index.js'
import { ask, boundsOf, missingOf, type Written } from './asking.js'

interface Powered {
  readonly feeds?: unknown
  readonly valve?: Written
  readonly states?: readonly Written[]
  readonly complete?: Written
}

const heating = { name: 'heating', energized: ['ZV2', 'ZV3', 'ZV4'] }
const hotWater = { name: 'hot water', energized: ['ZV1', 'ZV5'] }
const all = ['ZV1', 'ZV2', 'ZV3', 'ZV4', 'ZV5', 'TH2', 'TH3', 'TH4', 'TH5', 'CP1']

/** Five zone valves of 0.32 A at 24 V, four thermostats and a panel of 3 VA. */
const house = ({
  feeds = all,
  valve = {},
  states = [heating, hotWater],
  complete = { states: '2' },
}: Powered): Written => ({
  complete,
  states,
  components: [
    { id: 'TX1', kind: 'transformer', feeds },
    { id: ['ZV2', 'ZV3', 'ZV4', 'ZV5'], kind: 'zoneValve', power: '7.68 VA' },
    { id: 'ZV1', kind: 'zoneValve', power: '7.68 VA', ...valve },
    { id: ['TH2', 'TH3', 'TH4', 'TH5'], kind: 'thermostat', power: '3 VA' },
    { id: 'CP1', kind: 'controlPanel', power: '3 VA' },
  ],
})

const load = (powered: Powered): readonly string[] => boundsOf(ask(house(powered), 'TX1', 'load'), 'apparentPower')
const missing = (powered: Powered): readonly string[] => missingOf(ask(house(powered), 'TX1', 'load'))

const print = (power: number): string => printQuantity(power, 'apparentPower', 'ip')

describe('load of a transformer', () => {
  it('steady devices and the heaviest declared state', () => {
    expect(load({})).toEqual(['38 VA'])
    expect(ask(house({}), 'TX1', 'load').witness).toEqual([
      ...['TH2', 'TH3', 'TH4', 'TH5', 'CP1'].map((id) => `${id} ${print(3)}`),
      ...['ZV2', 'ZV3', 'ZV4'].map((id) => `${id} ${print(7.68)}`),
      `together in heating ${print(23.04)}`,
    ])
  })

  it('not all valves at once, unless nobody counted the states', () => {
    expect(load({ complete: {} })).toEqual(['38 VA', '53.4 VA'])
    expect(missing({ complete: {} })).toEqual(['state.count'])
    expect(load({ states: [], complete: {} })).toEqual(['15 VA', '53.4 VA'])
    expect(load({ states: [heating], complete: { states: '2' } })).toEqual(['38 VA', '53.4 VA'])
  })

  it('a state that may energize more may energize everything', () => {
    expect(load({ states: [heating, { name: 'hot water' }] })).toEqual(['38 VA', '53.4 VA'])
    expect(load({ states: [heating, { name: 'hot water', energized: ['ZV1', 'unknown'] }] })).toEqual([
      '38 VA',
      '53.4 VA',
    ])
  })

  it('a valve in no state may run on top of any', () => {
    const states = [heating, { name: 'hot water', energized: ['ZV5'] }]
    expect(load({ states })).toEqual(['38 VA', '45.7 VA'])
    expect(missing({ states })).toEqual(['state.count'])
  })

  it('unknown power counts from nothing to anything', () => {
    expect(load({ valve: { power: 'unknown' } })).toEqual(['38 VA', 'no upper limit'])
    expect(missing({ valve: { power: 'unknown' } })).toEqual(['ZV1.power'])
  })

  it('feeds that are not complete have no upper bound', () => {
    expect(load({ feeds: [...all, 'unknown'] })).toEqual(['38 VA', 'no upper limit'])
    expect(load({ feeds: 'unknown' })).toEqual(['0 VA', 'no upper limit'])
    expect(missing({ feeds: [...all, 'unknown'] })).toEqual(['TX1.feeds'])
  })

  it('a device fed by another transformer is not carried', () => {
    expect(load({ feeds: ['ZV1', 'ZV2', 'CP1'] })).toEqual(['10.7 VA'])
    expect(load({ feeds: [] })).toEqual(['0 VA'])
  })
})
