import { describe, expect, it } from 'vitest'
import {
  cvFromKv,
  fittingsLength,
  fittingsResistance,
  kvForDrop,
  kvFromCv,
  lengthOfResistance,
  resistanceLoss,
  resistanceOfKv,
  threeKResistance,
  twoKResistance,
  valveLoss,
} from '../../../src/sizing/index.js'
import { threeKOf, twoKOf } from '../../../src/tables/index.js'
import { si } from '../../../src/units/index.js'
import { numberOf } from '../number-of.js'
import { whyOf } from '../why-of.js'
import { within } from '../within.js'

const foot = si('length', '1 ft')
const inch = si('length', '1 in')
const gpm = si('volumeFlow', '1 gpm')
const psi = si('pressure', '1 psi')

describe('fittings by length', () => {
  // Six ells and a tee of 1 in.: 6 x 1.0 + 3.0 ft by Illinois 77-890 Table Q; 6 x 2.5 + 4.5 ft by the trade's list, recalled.
  it.each([
    ['state-code', 9],
    ['trade', 19.5],
  ] as const)('by the list %s: %s ft', (list, expected) => {
    const fittings = [
      { fitting: 'elbow90', count: 6 },
      { fitting: 'tee-branch', count: 1 },
    ] as const
    const result = fittingsLength({ size: 1, list, fittings })
    expect(numberOf(result) / foot).toBeCloseTo(expected, 9)
    expect(result.sized && result.working.map(({ name }) => name)).toEqual([
      '6 elbow90',
      '1 tee-branch',
      'equivalent length',
    ])
  })

  it('says what is not listed, and what cannot be', () => {
    const asked = { size: 0.5, list: 'state-code' } as const
    expect(whyOf(fittingsLength({ ...asked, fittings: [{ fitting: 'gate-valve', count: 1 }] }))).toBe(
      'No length is listed for gate-valve of size 0.5.',
    )
    expect(whyOf(fittingsLength({ ...asked, fittings: [{ fitting: 'elbow90', count: -2 }] }))).toContain('elbow90')
  })
})

describe('fittings by resistance', () => {
  // Four standard ells of 0.75 and a branch of 1.0, by hand.
  it('adds up', () => {
    const four = { fitting: 'elbow90', count: 4 } as const
    expect(numberOf(fittingsResistance([four, { fitting: 'tee-branch', count: 1 }]))).toBeCloseTo(4, 12)
    expect(numberOf(fittingsResistance([]))).toBe(0)
    expect(whyOf(fittingsResistance([{ ...four, count: NaN }]))).toContain('elbow90')
  })

  // 2 x 1000 kg/m3 x (1 m/s)^2 / 2 = 1000 Pa, by hand.
  it('takes pressure', () => {
    const flow = (Math.PI / 4) * 0.02 ** 2
    expect(numberOf(resistanceLoss({ resistance: 2, flow, insideDiameter: 0.02, density: 1000 }))).toBeCloseTo(1000, 9)
    expect(whyOf(resistanceLoss({ resistance: -2, flow, insideDiameter: 0.02, density: 1000 }))).toContain('resistance')
  })

  // Crane TP-410, problem 7.2: K 3.6 at a friction factor of 0.015 is 240 diameters.
  it('is a length of pipe', () => {
    expect(numberOf(lengthOfResistance({ resistance: 3.6, insideDiameter: 0.154, friction: 0.015 }))).toBeCloseTo(
      240 * 0.154,
      9,
    )
    expect(whyOf(lengthOfResistance({ resistance: 3.6, insideDiameter: 0.154, friction: 0 }))).toContain(
      'friction factor',
    )
  })

  // Published test values of an open library of fluid formulas.
  it('follows the Reynolds number by two and by three constants', () => {
    const slow = { reynolds: 10_000, insideDiameter: 2 * inch }
    within(1e-12, numberOf(twoKResistance({ ...slow, constants: { k1: 900, kInfinite: 4 } })), 6.09)
    within(1e-12, numberOf(twoKResistance({ ...slow, constants: twoKOf('globe-valve') })), 6.15)
    const large = { reynolds: 10_000, size: 12, constants: { k1: 950, ki: 0.25, kd: 4 } }
    within(1e-9, numberOf(threeKResistance(large)), 0.819510280626355)
    expect(whyOf(twoKResistance({ ...slow, reynolds: 0, constants: twoKOf('elbow45') }))).toContain('Reynolds number')
    expect(whyOf(threeKResistance({ ...large, size: 0 }))).toContain('size of the pipe')
  })

  // In turbulent flow both methods tell what handbooks do: a threaded ell of 1 in. 0.7 to 1.5, and two thirds of it for 45 degrees at most.
  it('is near the typical coefficients in fast flow', () => {
    const two = numberOf(twoKResistance({ reynolds: 1e5, insideDiameter: inch, constants: twoKOf('elbow90-threaded') }))
    const three = numberOf(threeKResistance({ reynolds: 1e5, size: 1, constants: threeKOf('elbow90-threaded') }))
    for (const found of [two, three]) {
      expect(found).toBeGreaterThan(0.7)
      expect(found).toBeLessThan(1.5)
    }
    const half = numberOf(threeKResistance({ reynolds: 1e5, size: 1, constants: threeKOf('elbow45') }))
    expect(half / three).toBeLessThan(2 / 3)
  })
})

describe('valves', () => {
  // Published test values of an open library of fluid formulas.
  it('convert their coefficients', () => {
    within(1e-9, numberOf(cvFromKv(2)), 2.3121984567073133)
    within(1e-9, numberOf(kvFromCv(2.312)), 1.9998283393826013)
    within(1e-6, numberOf(resistanceOfKv({ kv: 2.312, insideDiameter: 0.015 })), 15.1533746003999)
    within(1e-6, numberOf(resistanceOfKv({ kv: numberOf(kvFromCv(2.712)), insideDiameter: 0.015 })), 14.719595348352552)
  })

  // Crane TP-410, problem 7.2.
  it('of Kv 500 in 154 mm resist 3.6', () => {
    within(0.002, numberOf(resistanceOfKv({ kv: 500, insideDiameter: 0.154 })), 3.6)
  })

  // Job vector: Cv 7.5 at 1.33 gpm takes 0.073 ft, whatever the density.
  it.each([970, 1000, 1030])('of Cv 7.5 take 0.073 ft at 1.33 gpm and %s kg/m3', (density) => {
    const pressure = numberOf(valveLoss({ kv: numberOf(kvFromCv(7.5)), flow: 1.33 * gpm, density }))
    within(0.01, pressure / (density * 9.80665) / foot, 0.073)
  })

  // Crane TP-410, problem 7.27: 250 gpm at 9.8 psi want a Cv of 79 to 80.
  it('are chosen for a drop', () => {
    const cv = numberOf(cvFromKv(numberOf(kvForDrop({ flow: 250 * gpm, drop: 9.8 * psi, density: 999 }))))
    expect(cv).toBeGreaterThan(79)
    expect(cv).toBeLessThan(80)
  })

  it('say what cannot be', () => {
    expect(whyOf(valveLoss({ kv: 0, flow: 1, density: 1000 }))).toContain('flow coefficient')
    expect(whyOf(kvForDrop({ flow: 1, drop: 0, density: 1000 }))).toContain('pressure drop')
    expect(whyOf(kvFromCv(-1))).toContain('Cv')
    expect(whyOf(cvFromKv(NaN))).toContain('Kv')
    expect(whyOf(resistanceOfKv({ kv: 1, insideDiameter: 0 }))).toContain('inside diameter')
  })
})
