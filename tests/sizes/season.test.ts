import { describe, expect, it } from 'vitest'
import type { Edit } from '../../src/model/index.js'
import { over, sizesOf, type AskedLine } from './asked-size.js'

const means = [29, 31, 38, 48, 58, 68, 73, 72, 65, 54, 45, 34]
const months = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
]
const weather: readonly Edit[] = [
  ...months.map((month, index): Edit => ({ set: `site.monthMeans.${month}`, to: `${means[index] ?? 0} F` })),
  { set: 'site.daySpread', to: '8 F' },
  { set: 'site.daySwing', to: '9 F' },
]
const line = (topic: AskedLine['topic'], name: string, of?: string): AskedLine => ({
  topic,
  name,
  ...(of === undefined ? {} : { of }),
})
const sharedValue = (seen: ReturnType<ReturnType<typeof sizesOf>>): number =>
  seen.state === 'sized' ? seen.value : NaN

describe('the boiler over a year', () => {
  const ask = sizesOf('larkspur-lane', [...weather, { set: 'NE1.mediumMass', to: '10 lb' }])

  it('condenses where the return stays below the dew point less the approach', () => {
    // 4.8 % of oxygen: 26.6 % of excess air, dew point near 129.5 F by stoichiometry.
    expect(over(ask(line('boiler', 'warmest return that condenses', 'B1')), '120.5 F')).toBeCloseTo(1, 2)
    const part = sharedValue(ask(line('boiler', "part of the year's heat made condensing", 'B1')))
    // The return is cooler than that from about 19 F outdoors on; an hour in six of the coldest month is colder.
    expect(part).toBeGreaterThan(0.85)
    expect(part).toBeLessThan(0.97)
  })

  it('burns what the load over the year asks', () => {
    // 42,850 Btu/h over 65 F is 659 Btu/h F; 24 h of about 7,300 F days below 70 F, at 93 %: some 1,240 therms.
    const gas = over(ask(line('condensate', 'gas that heating burns in an average year', 'B1')), '1240 therms')
    expect(gas).toBeGreaterThan(0.95)
    expect(gas).toBeLessThan(1.05)
  })

  it('makes condensate within what the gas holds, and a charge follows from it', () => {
    // 1.135 gal for a therm. The flue leaves at 115 F, where 1.47 psi of vapor saturate it: 1.27 of 2.007 mol stay, 37 % condenses.
    const volume = over(ask(line('condensate', 'condensate of heating in an average year', 'B1')), '519 gal')
    expect(volume).toBeGreaterThan(0.95)
    expect(volume).toBeLessThan(1.05)
    const charge = sharedValue(ask(line('condensate', 'neutralizer charge for a year', 'B1')))
    const water = sharedValue(ask(line('condensate', 'condensate of heating in an average year', 'B1')))
    expect(charge).toBeCloseTo(water * 0.8, 9)
    const lasts = sharedValue(ask(line('condensate', 'time that its charge lasts', 'NE1')))
    expect(lasts / 31557600).toBeCloseTo(4.5359237 / charge, 6)
  })

  it('rests on the curve of the maker where there is one', () => {
    const points = [
      { id: 'cool', returnTemperature: '86 F', efficiency: '97 %' },
      { id: 'warm', returnTemperature: '140 F', efficiency: '87 %' },
    ]
    const rated = sizesOf('larkspur-lane', [
      ...weather,
      { set: 'B1.efficiencyCurve', to: { complete: 2, list: points } },
    ])
    expect(over(rated(line('boiler', 'efficiency with the return of the design day', 'B1')), '88.85 %')).toBeCloseTo(
      1,
      3,
    )
    const year = sharedValue(rated(line('boiler', 'efficiency over an average year, by the curve of its maker', 'B1')))
    expect(year).toBeGreaterThan(0.92)
    expect(year).toBeLessThan(0.97)
  })

  it('has hours below its lowest fire', () => {
    const time = sharedValue(ask(line('boiler', 'time of a year with less load than its lowest fire', 'B1')))
    // Between 59.2 F and 70 F outdoors.
    expect(time / 86400).toBeGreaterThan(40)
    expect(time / 86400).toBeLessThan(120)
  })

  it('tells no bins without weather', () => {
    const open = sizesOf('larkspur-lane', [])(line('boiler', "part of the year's heat made condensing", 'B1'))
    expect(open).toMatchObject({ state: 'open' })
  })
})

describe('boilers together', () => {
  it('cover a part of the load with the largest out', () => {
    const second: Edit = {
      insert: { id: 'B2', kind: 'boiler', output: '20000 Btu/h', minimumOutput: '4000 Btu/h', capped: ['relief'] },
    }
    const ask = sizesOf('larkspur-lane', [second])
    expect(over(ask(line('boiler', 'part of the load covered with the largest boiler out')), '46.67 %')).toBeCloseTo(
      1,
      3,
    )
    expect(over(ask(line('boiler', 'turndown of all boilers together')), '22.5')).toBeCloseTo(1, 6)
    const alone = sizesOf('larkspur-lane', [])
    expect(() => alone(line('boiler', 'part of the load covered with the largest boiler out'))).toThrow('no line')
    expect(over(alone(line('boiler', 'turndown of all boilers together')), '9.86')).toBeCloseTo(1, 2)
  })

  it('let rooms cool while a tank is heated', () => {
    const ask = sizesOf('larkspur-lane', [{ set: 'building.timeConstant', to: '30 h' }])
    // 65 F times 1 - exp(-45 min / 30 h).
    const cooling = ask(line('boiler', 'cooling of the rooms by the end of its priority, design day', 'HC1'))
    expect(over(cooling, '1.605 F')).toBeCloseTo(1, 3)
    expect(over(ask(line('boiler', 'longest that heating waits for a cold tank', 'T1')), '30.4 min')).toBeCloseTo(1, 2)
    const buffer = line('boiler', 'buffer to add for a run of 10 min, smallest zone alone, 55 F outdoors', 'B1')
    expect(over(ask(buffer), '9.9 gal')).toBeCloseTo(1, 2)
  })
})

describe('the slips', () => {
  const ask = sizesOf('larkspur-lane', [])
  // By stoichiometry for the gas of the tables; a flue of 141 F is far above the dew point.
  it.each([
    ['excess air', 'RD1', '26.6 %'],
    ['dew point of the flue gas', 'RD1', '129.5 F'],
    ['efficiency without the loss of the jacket', 'RD1', '88.6 %'],
    ['excess air', 'RD2', '31.9 %'],
  ])('%s of %s: %s', (name, of, expected) => {
    expect(over(ask(line('condensate', name, of)), expected)).toBeCloseTo(1, 2)
  })
})

describe('a tag for the gauge', () => {
  it('tells charge, cold and hot readings, and the relief valve', () => {
    const tag = sizesOf('larkspur-lane', [])(line('expansion', 'tag for the gauge', 'EX1'))
    const text = tag.state === 'told' ? tag.text : tag.state
    // Working by hand: 20.9 psi at a mean of 140 F, 24.5 psi at 170 F.
    expect(text).toMatch(/^Air charge of the tank: 16 psi/)
    expect(text).toMatch(/Cold, at 50 F: 16 psi\./)
    expect(text).toMatch(/Hot, at 140 F: 20\.[89]\d? psi\. Hot, at 170 F: 24\.[345]\d? psi\./)
    expect(text).toMatch(/opens at 30 psi/)
  })

  it('is open while its numbers are', () => {
    const tag = sizesOf('larkspur-lane', [{ forget: 'EX1.volume' }])(line('expansion', 'tag for the gauge', 'EX1'))
    expect(tag).toMatchObject({ state: 'open', missing: [{ subject: 'EX1', fact: 'volume' }] })
  })
})
