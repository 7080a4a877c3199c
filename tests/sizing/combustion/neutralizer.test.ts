import { describe, expect, it } from 'vitest'
import { calciteForAcid, neutralizerCharge, neutralizerYears } from '../../../src/sizing/combustion/index.js'
import { numberOf } from '../number-of.js'

describe('calcite', () => {
  // Computed: one CaCO3 (100.09 g/mol) for two H+.
  it.each([
    [3, 0.050043],
    [3.5, 0.015825],
  ])('for a cubic meter at pH %s: %s kg', (pH, mass) => {
    expect(numberOf(calciteForAcid({ volume: 1, pH }))).toBeCloseTo(mass, 5)
  })

  it('is not used up by water that is not sour, and no pH is above 14', () => {
    expect(calciteForAcid({ volume: 1, pH: 8 })).toMatchObject({ sized: true, valid: false })
    expect(calciteForAcid({ volume: 1, pH: 15 })).toEqual({
      sized: false,
      why: 'A pH of 15 does not exist in water: it lies between 0 and 14.',
    })
  })
})

describe('a neutralizer', () => {
  // Common practice: 0.1 to 0.3 g a liter, so 0.3 to 1 kg a year for a house of 3,250 L; three to five times that filled in.
  it('for a house uses 0.3 to 1 kg a year', () => {
    const used = (calcitePerVolume: number): number =>
      numberOf(neutralizerCharge({ yearlyVolume: 3.25, calcitePerVolume, reserve: 1 }))
    expect(used(0.1)).toBeCloseTo(0.3, 1)
    expect(used(0.3)).toBeCloseTo(1, 1)
  })

  it('filled with four times a year of which a quarter works lasts a year', () => {
    const house = { yearlyVolume: 3.25, calcitePerVolume: 0.2 }
    const charge = numberOf(neutralizerCharge({ ...house, reserve: 4 }))
    expect(numberOf(neutralizerYears({ ...house, charge, usable: 0.25 }))).toBeCloseTo(1, 12)
  })

  it('without condensate has no end to tell', () => {
    expect(neutralizerYears({ charge: 1, usable: 1, yearlyVolume: 0, calcitePerVolume: 0.2 }).sized).toBe(false)
  })
})
