import { describe, expect, it } from 'vitest'
import { aboveRegrowth, burnTime, legionellaAt, legionellaTenthTime } from '../../../src/sizing/hot-water/index.js'
import { si } from '../../../src/units/index.js'
import { numberOf } from '../number-of.js'

const burn = (temperature: string, list: 'second-degree' | 'full-thickness' | 'leaflet', partOfAdult = 1) =>
  burnTime({ temperature: si('temperature', temperature), list, partOfAdult })

describe('time to a burn', () => {
  // Moritz and Henriques 1947, as reprinted in public tables; the leaflet of a children's hospital.
  it.each([
    ['113 F', 'second-degree', 7200],
    ['120 F', 'second-degree', 480],
    ['120 F', 'full-thickness', 600],
    ['124 F', 'full-thickness', 252],
    ['131 F', 'second-degree', 17],
    ['140 F', 'second-degree', 3],
    ['140 F', 'full-thickness', 5],
    ['130 F', 'leaflet', 30],
    ['150 F', 'leaflet', 1.5],
  ] as const)('%s, %s: %s s', (temperature, list, seconds) => {
    expect(numberOf(burn(temperature, list))).toBeCloseTo(seconds, 6)
  })

  // By hand: halfway from 131 F (17 s) to 140 F (3 s) is the geometric mean.
  it('between two published times is their geometric mean', () => {
    expect(numberOf(burn('135.5 F', 'second-degree'))).toBeCloseTo(Math.sqrt(51), 6)
  })

  it('of a child is a quarter, by common practice', () => {
    expect(numberOf(burn('120 F', 'second-degree', 0.25))).toBeCloseTo(120, 6)
  })

  it('is only a bound beyond the list', () => {
    expect(burn('100 F', 'second-degree')).toMatchObject({ valid: false, value: 7200 })
    expect(burn('160 F', 'second-degree')).toMatchObject({ valid: false, value: 3 })
    expect(burn('140 F', 'second-degree')).toMatchObject({ valid: true })
  })
})

describe('Legionella', () => {
  // UK L8 and others: growth from 20 to 45 C, best 32 to 42 C, stops by 50 C.
  it.each([
    ['15 C', 'rests'],
    ['25 C', 'grows'],
    ['37 C', 'thrives'],
    ['45 C', 'grows'],
    ['50 C', 'dies'],
    ['60 C', 'dies'],
  ])('at %s %s', (temperature, behavior) => {
    expect(legionellaAt(si('temperature', temperature))).toBe(behavior)
  })

  // A planted fault: a return measured at 118 F, 47.8 C.
  it('grows again in a return of 118 F, 2.2 K below 50 C', () => {
    expect(numberOf(aboveRegrowth(si('temperature', '118 F')))).toBeCloseTo(-2.22, 2)
    expect(numberOf(aboveRegrowth(si('temperature', '122 F')))).toBeCloseTo(0, 9)
  })

  it.each([
    ['50 C', 124 * 60],
    ['60 C', 120],
    ['55 C', 60 * Math.sqrt(248)],
    ['70 C', 120],
  ])('at %s leaves a tenth after %s s', (temperature, seconds) => {
    expect(numberOf(legionellaTenthTime(si('temperature', temperature)))).toBeCloseTo(seconds, 6)
  })

  it('does not die at 45 C', () => {
    expect(legionellaTenthTime(si('temperature', '45 C')).sized).toBe(false)
  })
})
