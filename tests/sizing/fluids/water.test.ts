import { describe, expect, it } from 'vitest'
import {
  boilingTemperature,
  fluidConductivity,
  fluidDensity,
  fluidHeatCapacity,
  fluidViscosity,
  vaporPressure,
  waterConductivity,
  waterViscosity,
} from '../../../src/sizing/index.js'
import { si } from '../../../src/units/index.js'
import { numberOf } from '../number-of.js'
import { whyOf } from '../why-of.js'
import { within } from '../within.js'

const water = (celsius: number) => ({ fluid: 'water', temperature: celsius + 273.15 }) as const
const densityAt = (celsius: number): number => numberOf(fluidDensity(water(celsius)))

describe('water against its own release', () => {
  // IAPWS SR6-08 (2011), table 8: verification values at 0.1 MPa.
  it.each([
    [260, 3058.36075, 0.51562801],
    [298.15, 889.996774, 0.606502308],
    [375, 276.207245, 0.677913788],
  ])('%s K: %s uPa s, %s W/m K', (temperature, viscosity, conductivity) => {
    within(4e-9, waterViscosity(temperature).value * 1e6, viscosity)
    within(4e-9, waterConductivity(temperature).value, conductivity)
  })

  it('is told only where it was published', () => {
    expect([250, 300, 390].map((temperature) => waterViscosity(temperature).valid)).toEqual([false, true, false])
    expect([270, 300, 390].map((temperature) => waterConductivity(temperature).valid)).toEqual([false, true, false])
  })
})

describe('water against a second source', () => {
  // IAPWS-95 with the viscosity of 2008 and the conductivity of 2011 at 200 kPa, computed with CoolProp 8.0.0.
  it.each([
    [10, 999.75, 4194.8, 1.30581, 0.57884],
    [20, 998.252, 4183.7, 1.00157, 0.59807],
    [40, 992.26, 4179.2, 0.65274, 0.62854],
    [60, 983.239, 4184.7, 0.46606, 0.65105],
    [70, 977.808, 4189.9, 0.40357, 0.65981],
    [80, 971.835, 4196.5, 0.35408, 0.66705],
    [90, 965.355, 4205, 0.3142, 0.67284],
  ])('%s C', (celsius, density, heatCapacity, viscosity, conductivity) => {
    within(1e-4, densityAt(celsius), density)
    within(2e-4, numberOf(fluidHeatCapacity(water(celsius))), heatCapacity)
    within(2e-4, numberOf(fluidViscosity(water(celsius))) * 1000, viscosity)
    within(2e-4, numberOf(fluidConductivity(water(celsius))), conductivity)
  })

  // Formula of the international committee for weights and measures, Tanaka et al., Metrologia 38 (2001) 301, recalled: 0 to 40 C.
  it.each([0, 4, 10, 15, 20, 25, 30, 35, 40])(
    'density at %s C agrees with the metrologists to 2 in 100,000',
    (celsius) => {
      const away = ((celsius - 3.983035) ** 2 * (celsius + 301.797)) / (522_528.9 * (celsius + 69.34881))
      within(2e-5, densityAt(celsius), 999.97495 * (1 - away))
    },
  )

  // A handbook of chemistry and physics, after Swindells, recalled: from 20 to 100 C, resting on 1.002 mPa s at 20 C.
  it.each([20, 40, 60, 80, 100])('viscosity at %s C agrees with an older standard to half a percent', (celsius) => {
    const warmer = celsius - 20
    const exponent = -(1.3272 * warmer + 0.001053 * warmer ** 2) / (celsius + 105)
    within(0.005, numberOf(fluidViscosity(water(celsius))), 1.002e-3 * 10 ** exponent)
  })

  // IAPWS R12-08, table 4: 889.7351 uPa s at 998 kg/m3, which is 2 MPa.
  it('viscosity at 25 C agrees with the full formulation', () => {
    within(5e-4, numberOf(fluidViscosity(water(25))), 889.7351e-6)
  })

  // Job vectors, lb/ft3.
  it.each([
    [50, 62.409],
    [140, 61.379],
    [170, 60.795],
    [180, 60.58],
  ])('density at %s F: %s lb/ft3', (fahrenheit, expected) => {
    const density = numberOf(fluidDensity({ fluid: 'water', temperature: si('temperature', `${fahrenheit} F`) }))
    within(1e-4, density / (si('mass', '1 lb') / si('length', '1 ft') ** 3), expected)
  })
})

describe('vapor pressure of water', () => {
  // IAPWS-95, computed with CoolProp 8.0.0.
  it.each([
    [10, 1.2282],
    [20, 2.3393],
    [40, 7.38494],
    [60, 19.9464],
    [70, 31.201],
    [80, 47.414],
    [90, 70.182],
    [100, 101.418],
    [110, 143.379],
  ])('%s C: %s kPa', (celsius, expected) => within(2e-4, numberOf(vaporPressure(celsius + 273.15)) / 1000, expected))

  // IAPWS-IF97, tables 35 and 36: another formulation.
  it('agrees with the industrial formulation', () => {
    within(2e-4, numberOf(vaporPressure(300)), 3536.58941)
    within(2e-4, numberOf(vaporPressure(453.035632)), 1e6)
    within(2e-5, numberOf(boilingTemperature(1e6)), 453.035632)
  })

  it('says where there is none', () => {
    expect(whyOf(vaporPressure(NaN))).toContain('temperature of the water')
    expect(whyOf(vaporPressure(700))).toBe('Above 647.096 K water has no vapor pressure.')
    expect(whyOf(boilingTemperature(-1))).toContain('absolute pressure')
    expect(whyOf(boilingTemperature(3e7))).toBe('Above 22064000 Pa water does not boil.')
    expect([vaporPressure(270), boilingTemperature(500)]).toMatchObject([{ valid: false }, { valid: false }])
  })
})

describe('a fluid that cannot be', () => {
  it('is named', () => {
    expect(whyOf(fluidDensity({ fluid: 'water', temperature: NaN }))).toBe(
      'The temperature of the fluid cannot be NaN: it is above zero.',
    )
    const tooMuch = { fluid: { glycol: 'propylene-glycol', volumeFraction: 1.3 }, temperature: 300 } as const
    expect(whyOf(fluidViscosity(tooMuch))).toBe('The part of glycol by volume cannot be 1.3: it is a share.')
    expect(whyOf(fluidHeatCapacity({ fluid: 'water', temperature: 593 }))).toBe(
      'No heat capacity of the fluid is known at 593 K.',
    )
  })

  it('is told apart from one outside the published range', () => {
    expect([fluidDensity(water(60)), fluidDensity(water(115))]).toMatchObject([{ valid: true }, { valid: false }])
  })
})
