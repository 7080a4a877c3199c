import { describe, expect, it } from 'vitest'
import {
  pipeHeatLoss,
  recirculationFlow,
  recirculationLoss,
  recirculationReturn,
} from '../../../src/sizing/hot-water/index.js'
import { si } from '../../../src/units/index.js'
import { numberOf } from '../number-of.js'

const kelvin = (text: string): number => si('temperature', text)
const [inch, foot, btuPerHour, degree] = [si('length', '1 in'), si('length', '1 ft'), si('heatRate', '1 Btu/h'), 5 / 9]
const perFoot = btuPerHour / foot
const perSquareFoot = btuPerHour / (foot ** 2 * degree)

// 3/4 in. copper, 122 F water in 70 F air, surface coefficient 1.65 Btu/h ft2 F: vector of the sample houses.
const copper = {
  outsideDiameter: 0.875 * inch,
  water: kelvin('122 F'),
  air: kelvin('70 F'),
  surface: { coefficient: 1.65 * perSquareFoot },
}
const insulation = { thickness: inch, conductivity: 0.27 * perSquareFoot * inch }

describe('heat loss of a pipe', () => {
  it('with 1 in. of insulation: 5.64 Btu/h ft, bare: 19.7', () => {
    expect(numberOf(pipeHeatLoss({ ...copper, insulation })) / perFoot).toBeCloseTo(5.64, 2)
    expect(numberOf(pipeHeatLoss(copper)) / perFoot).toBeCloseTo(19.7, 1)
  })

  // HVAC Guide 1941, tables 6 and 7: bare level steel pipe, Btu/h ft F, in air of 70 F.
  it.each([
    [0.84, 50, 0.455],
    [0.84, 110, 0.546],
    [1.05, 80, 0.605],
    [1.315, 80, 0.743],
    [1.66, 110, 1.014],
    [2.375, 50, 1.18],
    [2.375, 110, 1.412],
  ])('of bare steel, %s in., %s F above the air: %s Btu/h ft F', (outside, difference, expected) => {
    const air = kelvin('70 F')
    const pipe = {
      outsideDiameter: outside * inch,
      water: air + difference * degree,
      air,
      surface: { emissivity: 0.9 },
    }
    const loss = numberOf(pipeHeatLoss(pipe)) / perFoot / difference
    expect(Math.abs(loss / expected - 1)).toBeLessThan(0.1)
  })

  it('is negative where the water is colder than the air, and not valid', () => {
    const cold = pipeHeatLoss({ ...copper, water: copper.air - 10, insulation, surface: { emissivity: 0.9 } })
    expect(numberOf(cold)).toBeLessThan(0)
    expect(cold).toMatchObject({ valid: false })
  })
})

describe('a circulation loop', () => {
  // A planted fault: 190 ft of bare return lose 3,730 Btu/h, insulated 1,070.
  it('of 190 ft loses 3,730 Btu/h bare and 1,070 insulated', () => {
    const loss = (lossPerLength: number): number =>
      numberOf(recirculationLoss([{ name: 'return', length: 190 * foot, lossPerLength }])) / btuPerHour
    expect(Math.abs(loss(numberOf(pipeHeatLoss(copper))) / 3730 - 1)).toBeLessThan(0.005)
    expect(Math.abs(loss(numberOf(pipeHeatLoss({ ...copper, insulation }))) / 1070 - 1)).toBeLessThan(0.005)
  })

  // Vector of the sample houses with the rounded 500 Btu/h per gpm and degree: 1.12 gpm; warm water weighs 1 % less.
  it('that loses 2,249 Btu/h with a drop of 4 F takes 1.12 gpm', () => {
    const loop = { loss: 2249 * btuPerHour, drop: 4 * degree, temperature: kelvin('120 F') }
    const flow = numberOf(recirculationFlow(loop)) / si('volumeFlow', '1 gpm')
    expect(Math.abs(flow / 1.12 - 1)).toBeLessThan(0.02)
  })

  // By hand: 30.56 K x (1 - exp(-2 / 30.56)), for the loss falls as the water cools.
  it('sized for a drop of 2 K comes back 1.94 K cooler', () => {
    const [supply, air, conductance] = [kelvin('125 F'), kelvin('70 F'), 20]
    const loss = conductance * (supply - air)
    const flow = numberOf(recirculationFlow({ loss, drop: 2, temperature: supply }))
    const back = numberOf(recirculationReturn({ supply, air, conductance, flow }))
    expect(supply - back).toBeCloseTo(1.936, 3)
  })

  it('without flow has no return to tell', () => {
    expect(recirculationReturn({ supply: 330, air: 293, conductance: 20, flow: 0 }).sized).toBe(false)
  })
})
