import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  classTwoLimit,
  loadsByState,
  longestWire,
  smallestTransformer,
  transformerUse,
  wireDrop,
  wireResistance,
} from '../../../src/sizing/electrical/index.js'
import { listedWireResistance } from '../../../src/tables/index.js'
import { si } from '../../../src/units/index.js'
import { numberOf } from '../number-of.js'
import { whyOf } from '../why-of.js'

const thousandFeet = si('length', '1000 ft')

describe('transformer over its states', () => {
  const draws = (power: number, ...ids: readonly string[]) => ids.map((id) => ({ id, power }))

  // First house, corrected to 7.68 VA a valve: heating 38.04, hot water 30.36, everything 53.4 VA.
  it('first house: every state, and everything at once', () => {
    const loads = loadsByState({
      steady: draws(3, 'TH2', 'TH3', 'TH4', 'TH5', 'CP1'),
      switched: draws(7.68, 'ZV1', 'ZV2', 'ZV3', 'ZV4', 'ZV5'),
      states: [
        { name: 'heating', energized: ['ZV2', 'ZV3', 'ZV4'] },
        { name: 'hot water', energized: ['ZV1', 'ZV5'] },
      ],
    })
    expect(loads.map(({ state, load }) => [state, Math.round(load.value * 100) / 100])).toEqual([
      ['heating', 38.04],
      ['hot water', 30.36],
      ['everything at once', 53.4],
    ])
  })

  it('without states everything at once is the only answer', () => {
    const loads = loadsByState({ steady: [], switched: draws(6, 'ZV1', 'ZV2'), states: [] })
    expect(loads.map(({ load }) => load.value)).toEqual([12])
  })

  // First house 38.0 of 50 VA, 76 %; second house 49.7 of 40 VA, 124 %.
  it.each([
    [38.04, 50, 0.76],
    [49.72, 40, 1.24],
  ])('%s of %s VA', (load, rating, share) =>
    expect(Math.abs(numberOf(transformerUse({ load, rating })) - share)).toBeLessThan(0.005),
  )

  it('49.72 VA want 62.2 VA at four fifths', () =>
    expect(numberOf(smallestTransformer({ load: 49.72, share: 0.8 }))).toBeCloseTo(62.15, 9))

  // NEC chapter 9, Table 11: 100 VA at 24 V, read.
  it('class 2 at 24 V: 100 VA', () => expect(numberOf(classTwoLimit(24))).toBe(100))
})

describe('wire', () => {
  // NEC 2011, chapter 9, Table 8, stranded at 75 C; the gauge formula is within half a percent.
  it.each([
    [18, 7.95],
    [16, 4.99],
    [14, 3.14],
    [12, 1.98],
  ])('gauge %s: %s ohm for 1,000 ft', (gauge, expected) => {
    expect(listedWireResistance(gauge)! * thousandFeet).toBeCloseTo(expected, 9)
    const formula =
      numberOf(wireResistance({ gauge, temperature: si('temperature', '75 C'), stranded: true })) * thousandFeet
    expect(Math.abs(formula / expected - 1)).toBeLessThan(0.006)
  })

  // Published table of solid copper at 20 C: 6.385, 10.15, 16.14.
  it.each([
    [18, 6.385],
    [20, 10.15],
    [22, 16.14],
  ])('solid gauge %s at 20 C: %s ohm for 1,000 ft', (gauge, expected) => {
    const formula = numberOf(wireResistance({ gauge, temperature: 293.15, stranded: false })) * thousandFeet
    expect(Math.abs(formula / expected - 1)).toBeLessThan(0.001)
  })

  it('a gauge that is not listed has none', () => expect(listedWireResistance(20)).toBeUndefined())

  // 18 AWG, 100 ft, 1.667 A: 2.65 V.
  it('100 ft of 18 gauge at 1.667 A: 2.65 V', () => {
    const circuit = { resistance: listedWireResistance(18)!, current: 1.6667 }
    expect(numberOf(wireDrop({ ...circuit, length: thousandFeet / 10 }))).toBeCloseTo(2.65005, 4)
  })

  it('the longest wire loses just what it may; twice the length twice as much; nothing at no length', () => {
    const positive = fc.double({ min: 1e-3, max: 10, noNaN: true })
    fc.assert(
      fc.property(positive, positive, positive, (resistance, current, drop) => {
        const length = numberOf(longestWire({ resistance, current, drop }))
        expect(numberOf(wireDrop({ resistance, current, length })) / drop).toBeCloseTo(1, 9)
        expect(numberOf(wireDrop({ resistance, current, length: 2 * length })) / drop).toBeCloseTo(2, 9)
        expect(numberOf(wireDrop({ resistance, current, length: 0 }))).toBe(0)
      }),
    )
  })

  it('thinner, hotter and stranded wire resists more', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 38 }),
        fc.double({ min: 230, max: 400, noNaN: true }),
        (gauge, temperature) => {
          const at = (change: object): number =>
            numberOf(wireResistance({ gauge, temperature, stranded: false, ...change }))
          expect(at({ gauge: gauge + 1 })).toBeGreaterThan(at({}))
          expect(at({ temperature: temperature + 1 })).toBeGreaterThan(at({}))
          expect(at({ stranded: true })).toBeGreaterThan(at({}))
        },
      ),
    )
  })

  it.each([
    ['load of the transformer', transformerUse({ load: -1, rating: 40 })],
    ['rating of the transformer', transformerUse({ load: 1, rating: 0 })],
    ['share of its rating', smallestTransformer({ load: 1, share: 0 })],
    ['at most 30 V', classTwoLimit(120)],
    ['voltage', classTwoLimit(NaN)],
    ['temperature of the wire', wireResistance({ gauge: 18, temperature: -1, stranded: true })],
    ['straight line', wireResistance({ gauge: 18, temperature: 10, stranded: true })],
    ['length of the wires', wireDrop({ resistance: 1, current: 1, length: -1 })],
    ['resistance', wireDrop({ resistance: 0, current: 1, length: 1 })],
    ['current', longestWire({ resistance: 1, current: 0, drop: 1 })],
  ])('names the %s', (named, sizing) => expect(whyOf(sizing)).toContain(named))
})
