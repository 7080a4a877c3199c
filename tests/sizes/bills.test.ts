import { describe, expect, it } from 'vitest'
import type { Edit } from '../../src/model/index.js'
import { monthDegreeDays } from '../../src/sizing/index.js'
import { si, writeQuantity } from '../../src/units/index.js'
import { over, sizesOf, type AskedLine } from './asked-size.js'

const set = (address: string, to: string): Edit => ({ set: address, to })

const year: readonly Edit[] = [
  set('site.degreeDays', '5600 F days'),
  set('site.degreeDaysBase', '65 F'),
  set('building.fuelOfYear', '1000 therms'),
  set('building.fuelForOtherUses', '200 therms'),
  set('building.seasonEfficiency', '75 %'),
]

/** An invented climate of about 5,600 F days. */
const means = {
  january: 29,
  february: 31,
  march: 38,
  april: 48,
  may: 58,
  june: 68,
  july: 73,
  august: 72,
  september: 65,
  october: 54,
  november: 45,
  december: 34,
} as const
const spread = 8

const weather: readonly Edit[] = [
  ...Object.entries(means).map(([month, mean]) => set(`site.monthMeans.${month}`, `${mean} F`)),
  set('site.daySpread', `${spread} F`),
  set('site.daySwing', '9 F'),
]

const lengths = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]

/** Bills of a house that loses 650 Btu/h F from 62 F down, burns at 80 % and takes 20 therms a month for other uses. */
const bills: readonly Edit[] = Object.entries(means).map(([month, mean], index) => {
  const days = lengths[index] ?? 0
  const degrees = monthDegreeDays({
    days,
    mean: si('temperature', `${mean} F`),
    spread: si('temperatureDifference', `${spread} F`),
    base: si('temperature', '62 F'),
  })
  const lost = (650 * 24 * (degrees.sized ? degrees.value * 1.8 : NaN)) / 1e5
  return set(`building.fuelOfMonths.${month}`, `${(lost / 0.8 + (20 * days) / 30.4375).toFixed(3)} therms`)
})

const load = (name: string): AskedLine => ({ topic: 'load', name })

describe('load by fuel bills', () => {
  const ask = sizesOf('larkspur-lane', year)

  // 1,000 - 200 therms at 75 %, over 24 h and 5,600 F days: 446.4 Btu/h F, and 60 F of that.
  it.each([
    ['heat lost for each degree, by the fuel of a year', '446.43 Btu/h F'],
    ['load by the fuel of a year', '26786 Btu/h'],
  ])('%s: %s', (name, expected) => {
    expect(over(ask(load(name)), expected)).toBeCloseTo(1, 4)
  })

  it('is held against the load of the zones', () => {
    const difference = ask(load('load by the fuel above the load of the zones'))
    expect(difference).toMatchObject({ state: 'sized', quantity: 'fraction' })
    expect(difference.state === 'sized' ? difference.value : 0).toBeCloseTo(26786 / 42850 - 1, 4)
    expect(ask(load('fuel against zones'))).toMatchObject({
      text: 'they differ by more than 25 %: one of the two is wrong',
    })
    const more = sizesOf('larkspur-lane', [...year, set('building.fuelOfYear', '1400 therms')])
    expect(more(load('fuel against zones'))).toMatchObject({ text: 'they agree within 25 %' })
  })

  it('names what is missing, and takes no efficiency for granted', () => {
    const open = sizesOf('larkspur-lane', [...year, { forget: 'building.seasonEfficiency' }])
    expect(open(load('load by the fuel of a year'))).toMatchObject({
      state: 'open',
      missing: [{ subject: 'building', fact: 'seasonEfficiency' }],
    })
    expect(ask(load('load by the fuel of a year within its doubts'))).toMatchObject({
      state: 'open',
      missing: [
        { subject: 'site', fact: 'daySpread' },
        { subject: 'site', fact: 'monthMeans' },
      ],
    })
  })

  it('has bounds about it once the weather is known', () => {
    const line = sizesOf('larkspur-lane', [...year, ...weather])(load('load by the fuel of a year within its doubts'))
    if (line.state !== 'bounded') throw new Error(line.state)
    const likely = si('heatRate', '26786 Btu/h')
    expect(line.low).toBeLessThan(likely * 0.95)
    expect(line.low).toBeGreaterThan(likely * 0.75)
    expect(line.high - likely).toBeCloseTo(likely - line.low, -1)
    expect(line.missing).toEqual([])
  })
})

describe('load by the bills of the months', () => {
  const ask = sizesOf('larkspur-lane', [
    ...year.filter((edit) => !('set' in edit) || !/degreeDays$|fuel|Efficiency/.test(edit.set)),
    set('building.seasonEfficiency', '80 %'),
    ...weather,
    ...bills,
  ])

  it('adds degree days up from the means of the months', () => {
    const days = ask(load('degree days of a year'))
    // The eight cold months alone, without a day above 65 F in them, come to 5,542.5 F days.
    expect(over(days, '5542.5 F days')).toBeGreaterThan(1)
    expect(over(days, '5542.5 F days')).toBeLessThan(1.06)
  })

  it('finds the house from which the bills were made', () => {
    const balance = ask(load('outdoor temperature from which no heat is needed, by the months'))
    expect(balance.state === 'sized' ? writeQuantity(balance.value, 'temperature', 'ip') : '').toMatch(
      /^6[12](\.\d+)? F/,
    )
    expect(over(ask(load('fuel for other uses, by the months')), '2737.85 Btu/h')).toBeCloseTo(1, 2)
    // 57 F of 650 Btu/h F between 62 F and the design day of 5 F.
    expect(over(ask(load('load by the cold months')), '37050 Btu/h')).toBeCloseTo(1, 1)
  })

  it('has bounds that hold the house', () => {
    const line = ask(load('load by the cold months, 95 times of 100'))
    if (line.state !== 'bounded') throw new Error(line.state)
    expect(line.low).toBeLessThan(si('heatRate', '37050 Btu/h'))
    expect(line.high).toBeGreaterThan(si('heatRate', '36000 Btu/h'))
  })
})
