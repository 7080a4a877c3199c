import { describe, expect, it } from 'vitest'
import { ask, boundsOf, missingOf, wordOf, type Written } from './asking.js'

describe('inlets left open in a chimney', () => {
  const flue = (told: Written): Written => ({ components: [{ id: 'CF1', kind: 'chimneyFlue', ...told }] })
  const inlets = (...states: readonly string[]): Written => ({
    complete: String(states.length),
    list: states.map((state, index) => ({ id: `inlet-${index + 1}`, state })),
  })
  const open = (told: Written) => boundsOf(ask(flue(told), 'CF1', 'inletsLeftOpen'), 'count')

  it('are those counted', () => {
    expect(open({ openInlets: '2' })).toEqual(['2'])
    expect(open({ openInlets: '0', inlets: inlets('sealed', 'used') })).toEqual(['0'])
  })

  it('are those listed as open where nobody counted', () => {
    expect(open({ inlets: inlets('open', 'sealed') })).toEqual(['1'])
    expect(open({ inlets: inlets('open', 'unknown') })).toEqual(['1', '2'])
    expect(open({})).toEqual(['0', 'no upper limit'])
    expect(missingOf(ask(flue({}), 'CF1', 'inletsLeftOpen'))).toEqual(['CF1.openInlets'])
  })
})

describe('air that burners need in a room', () => {
  const heater = { id: 'WH1', kind: 'waterHeater', space: 'cellar', venting: 'draft-hood', input: '36000 Btu/h' }
  const boiler = { id: 'B1', kind: 'boiler', space: 'cellar', sealedCombustion: 'yes', input: '75000 Btu/h' }
  const house = (parts: readonly Written[], complete: Written = { boiler: '1', waterHeater: '1' }): Written => ({
    complete,
    spaces: [{ id: 'cellar' }, { id: 'attic' }],
    components: parts,
  })
  const needed = (document: Written, space = 'cellar') => ask(document, space, 'roomAirNeeded')
  const inFeet = (document: Written, space?: string): readonly number[] => {
    const answer = needed(document, space)
    return answer.state === 'number' ? [answer.low, answer.high].map((end) => Math.round(end / 0.028316846592)) : []
  }

  it('50 cubic feet for each 1,000 Btu/h, sealed burners not counted', () => {
    expect(inFeet(house([heater, boiler]))).toEqual([1800, 1800])
    expect(inFeet(house([heater, boiler]), 'attic')).toEqual([0, 0])
    expect(inFeet(house([heater, { ...boiler, sealedCombustion: 'no' }]))).toEqual([5550, 5550])
  })

  it('one that may be sealed, or may stand elsewhere, may need it', () => {
    const open = house([heater, { ...boiler, sealedCombustion: 'unknown' }])
    expect(inFeet(open)).toEqual([1800, 5550])
    expect(missingOf(needed(open))).toEqual(['B1.sealedCombustion'])
    expect(inFeet(house([{ ...heater, space: 'unknown' }, boiler]))).toEqual([0, 1800])
    expect(missingOf(needed(house([heater, boiler], { boiler: '1' })))).toEqual(['waterHeater.count'])
    expect(missingOf(needed(house([heater, boiler], { waterHeater: '1' })))).toEqual(['boiler.count'])
  })
})

describe('openings that bring the burners of a room air', () => {
  const heater = {
    id: 'WH1',
    kind: 'waterHeater',
    space: 'cellar',
    venting: 'draft-hood',
    draftHoodArea: '7 in2',
    input: '36000 Btu/h',
  }
  const opening = (id: string, told: Written): Written => ({
    id,
    kind: 'combustionAirOpening',
    space: 'cellar',
    to: 'outdoors',
    way: 'direct',
    blocked: 'no',
    ...told,
  })
  const enough = (openings: readonly Written[], more: Written = {}) =>
    ask(
      {
        complete: { boiler: '0', waterHeater: '1', combustionAirOpening: String(openings.length), ...more },
        spaces: [{ id: 'cellar' }],
        components: [heater, ...openings],
      },
      'cellar',
      'outdoorAirEnough',
    )
  const pair = (area: string, told: Written = {}): readonly Written[] => [
    opening('CA1', { position: 'high', area, ...told }),
    opening('CA2', { position: 'low', area, ...told }),
  ]

  // IFGC 304.6 as recalled: 36,000 Btu/h ask for 9 in2 of each of two, 18 in2 through horizontal ducts, 12 in2 of a single one.
  it.each([
    ['two straight through the wall', pair('9 in2'), 'yes'],
    ['two a little too small', pair('8.9 in2'), 'no'],
    ['two vertical ducts', pair('9 in2', { way: 'vertical' }), 'yes'],
    ['two horizontal ducts', pair('11 in2', { way: 'horizontal' }), 'no'],
    ['two wide horizontal ducts', pair('18 in2', { way: 'horizontal' }), 'yes'],
    ['a single one high up', [opening('CA1', { position: 'high', area: '12 in2' })], 'yes'],
    ['a single one near the floor', [opening('CA1', { position: 'low', area: '40 in2' })], 'no'],
    ['two high up, too small for a single one', pair('11 in2', { position: 'high' }), 'no'],
    ['one in the middle of the wall', [opening('CA1', { position: 'between', area: '40 in2' })], 'no'],
    ['openings to another room', pair('100 in2', { to: 'indoors' }), 'no'],
    ['a covered pair', pair('9 in2', { blocked: 'yes' }), 'no'],
    ['none', [], 'no'],
  ])('%s', (_name, openings, answer) => {
    expect(wordOf(enough(openings))).toBe(answer)
  })

  it('one that is not measured, or not listed, leaves it open', () => {
    expect(wordOf(enough(pair('unknown')))).toBe('unknown')
    expect(missingOf(enough(pair('unknown')))).toEqual(['CA1.area', 'CA2.area', 'cellar.outdoorAirEnough'])
    expect(wordOf(enough(pair('8.9 in2'), { combustionAirOpening: 'unknown' }))).toBe('unknown')
    expect(wordOf(enough(pair('9 in2', { blocked: 'unknown' })))).toBe('unknown')
    expect(wordOf(enough(pair('9 in2'), { boiler: 'unknown' }))).toBe('unknown')
  })

  it('the hole in the wall is the most that its louver lets through', () => {
    const louvered = pair('unknown', { grossArea: '8 in2', louver: 'metal' })
    expect(wordOf(enough(louvered))).toBe('no')
    expect(wordOf(enough(pair('unknown', { grossArea: '40 in2', louver: 'metal' })))).toBe('unknown')
  })
})

describe('readings at the draft hood of a heater', () => {
  const house = (readings: readonly Written[], complete: Written = { reading: String(readings.length) }): Written => ({
    complete,
    components: [{ id: 'WH1', kind: 'waterHeater' }],
    readings: readings.map((reading, index) => ({ id: `RD${index + 1}`, ...reading })),
  })
  const taken = (document: Written) => boundsOf(ask(document, 'WH1', 'draftReadings'), 'count')

  it('counts those taken there', () => {
    expect(taken(house([{ sample: 'draft-hood', component: 'WH1' }]))).toEqual(['1'])
    expect(taken(house([{ sample: 'flue-gas', component: 'WH1' }]))).toEqual(['0'])
    expect(ask(house([{ sample: 'draft-hood', component: 'WH1' }]), 'WH1', 'draftReadings').witness).toEqual(['RD1'])
  })

  it('one of which little is known may be one', () => {
    expect(taken(house([{ sample: 'draft-hood' }]))).toEqual(['0', '1'])
    expect(missingOf(ask(house([{ component: 'WH1' }]), 'WH1', 'draftReadings'))).toEqual(['RD1.sample'])
    expect(taken(house([], {}))).toEqual(['0', 'no upper limit'])
  })
})

describe('age of a calibration', () => {
  const age = (told: Written) => ask({ readings: [{ id: 'RD1', ...told }] }, 'RD1', 'calibrationAge')
  const days = (told: Written): readonly number[] => {
    const answer = age(told)
    return answer.state === 'number' ? [answer.low / 86400, answer.high / 86400] : []
  }

  it('counts days from the calibration to the reading', () => {
    expect(days({ at: '2025-10-21', instrumentCalibratedOn: '2025-10-01' })).toEqual([20, 20])
    expect(missingOf(age({ at: '2025-10-21', instrumentCalibratedOn: '2025-10-01' }))).toEqual([])
  })

  it('a month is any of its days', () => {
    expect(days({ at: '2025-10-31', instrumentCalibratedOn: '2025-09' })).toEqual([31, 60])
    expect(missingOf(age({ at: '2025-10-31', instrumentCalibratedOn: '2025-09' }))).toEqual([
      'RD1.instrumentCalibratedOn',
    ])
    expect(missingOf(age({ at: '2025-10-31' }))).toEqual(['RD1.instrumentCalibratedOn'])
  })
})
