import { describe, expect, it } from 'vitest'
import { airFree, carbonDioxideAt } from '../../src/sizing/index.js'

// Dry products of natural gas with 20.9 % oxygen in air; the figures are worked by hand from those two relations.
describe('flue gas', () => {
  it('without its air: 42 ppm at 4.8 % oxygen are 54.5 ppm, 8 ppm at 5.5 % are 10.9 ppm', () => {
    expect(airFree(42e-6, 0.048) * 1e6).toBeCloseTo(54.5, 1)
    expect(airFree(8e-6, 0.055) * 1e6).toBeCloseTo(10.9, 1)
    expect(airFree(42e-6, 0)).toBe(42e-6)
  })

  it('has 9.09 % carbon dioxide at 4.8 % oxygen, and none in plain air', () => {
    expect(carbonDioxideAt(0.048) * 100).toBeCloseTo(9.09, 2)
    expect(carbonDioxideAt(0.209)).toBe(0)
  })
})
