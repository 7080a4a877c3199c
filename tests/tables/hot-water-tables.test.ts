import { describe, expect, it } from 'vitest'
import {
  type BurnList,
  burnTimes,
  fixtureHotWater,
  type HotWaterProfileName,
  hotWaterProfile,
  legionellaBands,
  waterHeaterBin,
  waterHeaterBins,
} from '../../src/tables/index.js'
import { si } from '../../src/units/index.js'

describe('the days of hot water', () => {
  // EU 812/2013, Annex VII: daily sums and largest hours, read; the draws are recalled and must agree with both.
  it.each<readonly [HotWaterProfileName, number, number]>([
    ['M', 5.845, 1.61],
    ['L', 11.655, 4.34],
    ['XL', 19.07, 8.945],
  ])('%s has draws of %s kWh together and %s in the largest hour', (name, sum, largest) => {
    const { draws, heat } = hotWaterProfile(name)
    const drawn = (from: number, to: number): number =>
      draws.filter(({ start }) => start >= from && start < to).reduce((all, draw) => all + draw.heat, 0) / 3.6e6
    expect(heat / 3.6e6).toBeCloseTo(sum, 9)
    expect(drawn(0, 86_400)).toBeCloseTo(sum, 9)
    expect(Math.max(...draws.map(({ start }) => drawn(start, start + 3600)))).toBeCloseTo(largest, 9)
  })
})

describe('the burn times', () => {
  it.each<BurnList>(['second-degree', 'full-thickness', 'leaflet'])(
    '%s grow shorter as the water grows hotter',
    (list) => {
      const times = burnTimes(list)
      expect(times.length).toBeGreaterThan(6)
      expect(times).toEqual(times.toSorted((one, other) => one.temperature - other.temperature))
      expect(times).toEqual(times.toSorted((one, other) => other.time - one.time))
    },
  )

  it('of the full thickness are longer than those of second degree', () => {
    const full = burnTimes('full-thickness')
    for (const { temperature, time } of burnTimes('second-degree')) {
      expect(full.find((each) => each.temperature === temperature)?.time).toBeGreaterThan(time)
    }
  })
})

describe('the bands of Legionella', () => {
  it('follow each other and end with death', () => {
    const bands = legionellaBands()
    expect(bands).toEqual(bands.toSorted((one, other) => one.from - other.from))
    expect(bands.at(-1)?.behavior).toBe('dies')
    expect(bands.filter(({ behavior }) => behavior === 'dies').every(({ tenthLeftAfter }) => tenthLeftAfter)).toBe(true)
  })
})

describe('the bins of water heaters', () => {
  // 16 CFR 305 Appendix D1: below 18, 18 to 50.9, 51 to 74.9, 75 gal and more.
  it.each([
    ['17 gal', 'very-small'],
    ['18 gal', 'low'],
    ['60 gal', 'medium'],
    ['157.6 gal', 'high'],
  ])('%s is %s', (volume, bin) => {
    expect(waterHeaterBin(si('volume', volume))?.bin).toBe(bin)
  })

  it('draw more the larger they are', () => {
    const bins = waterHeaterBins()
    expect(bins).toEqual(bins.toSorted((one, other) => one.dailyDraw - other.dailyDraw))
  })
})

describe('the fixtures', () => {
  it('a shower takes 30 gal in an hour of use', () => {
    expect(fixtureHotWater('shower')).toBeCloseTo(si('volume', '30 gal'), 12)
  })
})
