import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { densestMixture, glycolDensity, glycolMassFraction, waterDensity, type Glycol } from '../../src/sizing/index.js'

const celsius = (degrees: number): number => degrees + 273.15
const within = (part: number, found: number, expected: number): void => {
  expect(Math.abs(found - expected) / expected).toBeLessThanOrEqual(part)
}
const glycols = ['propylene-glycol', 'ethylene-glycol'] as const

describe('density of water', () => {
  // IAPWS SR6-08 (2011), table 8: verification values at 0.1 MPa.
  it.each([
    [260, 997.06836],
    [298.15, 997.047013],
    [375, 957.00971],
  ])('%s K: %s kg/m3', (temperature, expected) => within(2e-9, waterDensity(temperature).value, expected))

  // IAPWS-95 at 100 kPa, computed with CoolProp 8.0.0.
  it.each([
    [10, 999.7018],
    [15, 999.102],
    [40, 992.2158],
    [50, 988.0345],
    [70, 977.764],
    [80, 971.7898],
    [90, 965.309],
  ])('%s C agrees with the full equation of state: %s kg/m3', (degrees, expected) =>
    within(2e-6, waterDensity(celsius(degrees)).value, expected),
  )

  it('tells when it is asked outside its range', () => {
    expect([250, 253.15, 383.15, 384].map((temperature) => waterDensity(temperature).valid)).toEqual([
      false,
      true,
      true,
      false,
    ])
  })

  it('is lighter the warmer it is, from 5 C on', () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 109, noNaN: true }), (degrees) => {
        expect(waterDensity(celsius(degrees + 1)).value).toBeLessThan(waterDensity(celsius(degrees)).value)
      }),
    )
  })
})

describe('mass fraction of glycol', () => {
  // ASHRAE Handbook Fundamentals 2001, propylene glycol tables.
  it.each([
    [0.194, 0.2],
    [0.294, 0.3],
    [0.396, 0.4],
    [0.499, 0.5],
  ])('propylene glycol, %s by volume: %s by mass', (volume, mass) => {
    expect(glycolMassFraction('propylene-glycol', volume).value).toBeCloseTo(mass, 10)
  })

  // The same tables, through the freezing points that go with 20 and 40 % by mass.
  it.each([
    [0.181, 0.2],
    [0.375, 0.4],
  ])('ethylene glycol, %s by volume: %s by mass', (volume, mass) => {
    expect(glycolMassFraction('ethylene-glycol', volume).value).toBeCloseTo(mass, 10)
  })

  it('30 % by volume of propylene glycol is 30.6 % by mass', () => {
    expect(glycolMassFraction('propylene-glycol', 0.3).value).toBeCloseTo(0.306, 3)
  })

  it('runs from none to all, and tells where it is not published', () => {
    const asked = [-0.1, 0, 0.57, 0.7, 1, 1.1].map((volume) => glycolMassFraction('ethylene-glycol', volume))
    expect(asked.map(({ valid }) => valid)).toEqual([false, true, true, false, false, false])
    expect([asked[1]?.value, asked[4]?.value]).toEqual([0, 1])
  })
})

describe('density of glycol in water', () => {
  const at = (glycol: Glycol, mass: number, degrees: number): number =>
    glycolDensity({ glycol, volumeFraction: volumeOf(glycol, mass), temperature: celsius(degrees) }).value

  // Melinder 2010 polynomials by mass fraction, computed with CoolProp 8.0.0 (INCOMP::MPG and INCOMP::MEG).
  it.each([
    ['propylene-glycol', 0.3, 60, 1001.152830432],
    ['propylene-glycol', 0.5, 60, 1010.45721687781],
    ['propylene-glycol', 0.3, 10, 1028.03531047578],
    ['propylene-glycol', 0.6, 10, 1049.74677695414],
    ['ethylene-glycol', 0.3, 60, 1017.4621],
    ['ethylene-glycol', 0.5, 60, 1040.49],
    ['ethylene-glycol', 0.3, 10, 1041.81268177996],
    ['ethylene-glycol', 0.6, 10, 1082.74938839421],
  ] as const)('%s %s by mass at %s C: %s kg/m3', (glycol, mass, degrees, expected) =>
    within(1e-7, at(glycol, mass, degrees), expected),
  )

  // ASHRAE Handbook Fundamentals 2001, by volume. Its glycols are inhibited and up to 0.65 % heavier than Melinder's.
  it.each([
    [0.3, 20, 1028.35],
    [0.5, 20, 1042.87],
    [0.3, 60, 1006.44],
    [0.4, 60, 1012.3],
    [0.5, 60, 1017.04],
    [0.3, 80, 992.42],
    [0.5, 80, 1001.05],
  ])('propylene glycol %s by volume at %s C is near the handbook: %s kg/m3', (volumeFraction, degrees, expected) => {
    const { value } = glycolDensity({ glycol: 'propylene-glycol', volumeFraction, temperature: celsius(degrees) })
    within(0.0065, value, expected)
    expect(value).toBeLessThan(expected)
  })

  it('is denser the stronger it is, and never denser than the densest', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...glycols),
        fc.double({ min: 0, max: 0.56, noNaN: true }),
        fc.constantFrom(0, 10, 20),
        (glycol, volumeFraction, degrees) => {
          const density = (more: number): number =>
            glycolDensity({ glycol, volumeFraction: volumeFraction + more, temperature: celsius(degrees) }).value
          expect(density(0.01)).toBeGreaterThan(density(0))
          expect(density(0.01)).toBeLessThan(densestMixture[glycol])
        },
      ),
    )
  })

  it('is no more valid where it is too strong, too hot or frozen', () => {
    const asked = [
      { volumeFraction: 0.3, temperature: celsius(10) },
      { volumeFraction: 0.7, temperature: celsius(10) },
      { volumeFraction: 0.3, temperature: celsius(101) },
      { volumeFraction: 0.3, temperature: celsius(-20) },
    ]
    expect(asked.map((one) => glycolDensity({ glycol: 'propylene-glycol', ...one }).valid)).toEqual([
      true,
      false,
      false,
      false,
    ])
  })

  it('shows its working', () => {
    const { working, value } = glycolDensity({
      glycol: 'propylene-glycol',
      volumeFraction: 0.35,
      temperature: celsius(10),
    })
    expect(working.map(({ name }) => name)).toEqual(['mass fraction of glycol', 'density of propylene-glycol in water'])
    expect(working.at(-1)?.value).toBe(value)
  })
})

/** Volume fraction at which a mass fraction is reached; tables are asked by mass here. */
function volumeOf(glycol: Glycol, mass: number): number {
  let [low, high] = [0, 0.7]
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2
    if (glycolMassFraction(glycol, middle).value < mass) low = middle
    else high = middle
  }
  return high
}
