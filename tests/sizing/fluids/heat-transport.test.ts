import { describe, expect, it } from 'vitest'
import { carriedHeat, flowForHeat, type HeatingFluid } from '../../../src/sizing/index.js'
import { si } from '../../../src/units/index.js'
import { numberOf } from '../number-of.js'
import { whyOf } from '../why-of.js'
import { within } from '../within.js'

const fahrenheit = (degrees: number): number => si('temperature', `${degrees} F`)
const gpm = si('volumeFlow', '1 gpm')
const btuPerHour = si('heatRate', '1 Btu/h')

describe('heat carried by a flow', () => {
  // What the trade rounds to 500, from IAPWS-95 at 200 kPa.
  it.each([
    [40, 503],
    [80, 498.3],
    [120, 494.3],
    [160, 489.7],
    [200, 484.7],
  ])('at %s F a gallon a minute and a degree carry %s Btu/h', (at, expected) => {
    const [supply, back, metered] = [at + 0.5, at - 0.5, at].map(fahrenheit)
    const heat = numberOf(carriedHeat({ flow: gpm, fluid: 'water', supply: supply!, return: back!, metered: metered! }))
    within(2e-4, heat / btuPerHour, expected)
  })

  // Second sample house: 35 % propylene glycol at 165/145 F, 473.3 Btu/h for a gallon a minute and a degree.
  it.each([
    [24_600, 2.6],
    [21_800, 2.3],
    [14_900, 1.57],
    [6_200, 0.65],
    [9_800, 1.04],
  ])('%s Btu/h at 20 F with glycol: %s gpm', (load, expected) => {
    const fluid: HeatingFluid = { glycol: 'propylene-glycol', volumeFraction: 0.35 }
    const water = { supply: fahrenheit(165), return: fahrenheit(145), metered: fahrenheit(145) }
    within(0.02, numberOf(flowForHeat({ heatRate: load * btuPerHour, fluid, ...water })) / gpm, expected)
  })

  it('comes back from its flow', () => {
    const water = { fluid: 'water', supply: 350, return: 330, metered: 330 } as const
    const flow = numberOf(flowForHeat({ heatRate: 12_000, ...water }))
    expect(numberOf(carriedHeat({ flow, ...water }))).toBeCloseTo(12_000, 8)
  })

  it('says what cannot be', () => {
    const water = { fluid: 'water', supply: 330, return: 350, metered: 330 } as const
    expect(whyOf(flowForHeat({ heatRate: 1000, ...water }))).toContain('not colder than the supply')
    expect(whyOf(flowForHeat({ heatRate: -1, ...water }))).toContain('heat rate')
    expect(whyOf(carriedHeat({ flow: NaN, ...water }))).toContain('flow')
    expect(whyOf(carriedHeat({ flow: 1, ...water, metered: -5 }))).toContain('temperature of the fluid')
  })
})
