import { describe, expect, it } from 'vitest'
import { airFree, carbonMonoxideAirFree } from '../../../src/sizing/index.js'
import { numberOf } from '../number-of.js'

// Dry products of natural gas with 20.9 % oxygen in air; the figures are worked by hand.
describe('flue gas without its air', () => {
  it.each([
    [42e-6, 0.048, 54.5],
    [8e-6, 0.055, 10.9],
    [42e-6, 0, 42],
  ])('%s at %s of oxygen: %s ppm', (carbonMonoxide, oxygen, expected) => {
    expect(airFree(carbonMonoxide, oxygen) * 1e6).toBeCloseTo(expected, 1)
    expect(numberOf(carbonMonoxideAirFree({ carbonMonoxide, oxygen }))).toBe(airFree(carbonMonoxide, oxygen))
  })

  it('has no limit where the sample has none', () => {
    expect(airFree(Infinity, 0.048)).toBe(Infinity)
  })
})
