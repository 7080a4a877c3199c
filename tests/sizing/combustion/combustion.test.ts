import { describe, expect, it } from 'vitest'
import {
  airFromAnalysis,
  carbonDioxideFromOxygen,
  carbonDioxideInFlue,
  carbonMonoxideAirFree,
  combustionAirFlow,
  condensate,
  condensateRate,
  condensedShare,
  condensingEfficiency,
  condensingReturn,
  dewPoint,
  dryFlueLoss,
  excessAir,
  flueDewPoint,
  flueGasInIntake,
  grossHeatingValue,
  grossOverNet,
  netHeatingValue,
  oxygenInFlue,
  slipGaps,
  theoreticalAir,
} from '../../../src/sizing/combustion/index.js'
import { analyzerSettings, type FuelName, fuelNamed } from '../../../src/tables/index.js'
import { si } from '../../../src/units/index.js'
import { numberOf } from '../number-of.js'

const sea = 101_325
const [methane, naturalGas] = [fuelNamed('methane'), fuelNamed('natural-gas')]

describe('flue gas by stoichiometry', () => {
  // Computed tables of an engineering reference (stoichiometry and IAPWS saturation): dew point C, CO2 %.
  it.each<readonly [FuelName, number, number, number]>([
    ['methane', 0, 59.2, 11.74],
    ['methane', 0.1, 57.4, 10.56],
    ['methane', 0.2, 55.7, 9.59],
    ['methane', 0.3, 54.2, 8.79],
    ['methane', 0.5, 51.4, 7.53],
    ['natural-gas', 0, 59.0, 11.95],
    ['natural-gas', 0.2, 55.4, 9.77],
    ['propane', 0, 54.9, 13.76],
    ['propane', 0.3, 49.9, 10.37],
  ])('%s with excess air of %s: dew point %s C, %s %% CO2', (name, air, dew, dioxide) => {
    const burning = { fuel: fuelNamed(name), excessAir: air }
    expect(numberOf(flueDewPoint({ ...burning, pressure: sea })) - 273.15).toBeCloseTo(dew, 0)
    expect(numberOf(carbonDioxideInFlue(burning)) * 100).toBeCloseTo(dioxide, 1)
  })

  // Moran and Shapiro, Fundamentals of Engineering Thermodynamics, example 13.2: 9.7 % CO2, 0.5 % CO, 2.95 % O2, methane.
  it('of a textbook: 10.78 mol of air for one of methane, 113 % of what it needs, dew point 57 C', () => {
    const air = numberOf(
      airFromAnalysis({ fuel: methane, carbonDioxide: 0.097, carbonMonoxide: 0.005, nitrogen: 0.8685 }),
    )
    expect(air).toBeCloseTo(10.78, 2)
    expect(air / numberOf(theoreticalAir(methane))).toBeCloseTo(1.132, 3)
    expect(numberOf(dewPoint({ waterShare: 0.16943, pressure: sea })) - 273.15).toBeCloseTo(57, 0)
  })

  // The same textbook family: 9 mol of water in 109 of products at 14.7 psia, 108 F.
  it('of another textbook: 108 F', () => {
    expect(numberOf(dewPoint({ waterShare: 9 / 109, pressure: sea }))).toBeCloseTo(si('temperature', '108 F'), 0)
  })

  it('at 1,500 m, 84.6 kPa, has its dew point about 4 K lower', () => {
    const flue = { fuel: naturalGas, excessAir: 0.2 }
    const lower =
      numberOf(flueDewPoint({ ...flue, pressure: sea })) - numberOf(flueDewPoint({ ...flue, pressure: 84_600 }))
    expect(lower).toBeGreaterThan(3.5)
    expect(lower).toBeLessThan(4.5)
  })

  it('lets a boiler condense with returns 5 K below the dew point', () => {
    const flue = { fuel: naturalGas, excessAir: 0.2, pressure: sea }
    expect(numberOf(condensingReturn({ ...flue, approach: 5 }))).toBeCloseTo(numberOf(flueDewPoint(flue)) - 5, 10)
  })
})

describe('heating value', () => {
  // Moran and Shapiro, example 13.7, from heats of formation: 55,507 and 50,019 kJ/kg.
  it('of methane: 55.51 and 50.02 MJ/kg', () => {
    expect(numberOf(grossHeatingValue(methane)) / 55_507e3).toBeCloseTo(1, 3)
    expect(numberOf(netHeatingValue(methane)) / 50_019e3).toBeCloseTo(1, 3)
  })

  // Computed from the heats of ISO 6976 at 25 C.
  it.each<readonly [FuelName, number]>([
    ['methane', 1.11],
    ['natural-gas', 1.108],
    ['propane', 1.086],
  ])('gross over net of %s: %s', (name, ratio) => {
    expect(numberOf(grossOverNet(fuelNamed(name)))).toBeCloseTo(ratio, 3)
  })
})

describe('condensate', () => {
  // 1.13 gal a therm: trade rule, read; computed for methane at 1 kg/L.
  it('of the first sample house, 75,000 Btu/h: 0.85 gal/h at most', () => {
    const rate = numberOf(
      condensateRate({ fuel: methane, heatInput: si('heatRate', '75000 Btu/h'), condensedShare: 1 }),
    )
    expect(Math.abs((rate * 3600) / 1000 / si('volume', '1 gal') / 0.85 - 1)).toBeLessThan(0.02)
    expect(rate * 3600).toBeCloseTo(0.1457 * 21.98, 2)
  })

  // A trade journal on condensate disposal, read: 1.6 L for a cubic meter at 0 C, here 44.615 mol.
  it('of a cubic meter of natural gas: 1.6 kg at most', () => {
    const heat = 44.615 * (0.93 * 890_580 + 0.049 * 1_560_690)
    expect(Math.abs(numberOf(condensate({ fuel: naturalGas, heat, condensedShare: 1 })) / 1.6 - 1)).toBeLessThan(0.02)
  })
})

describe('efficiency of a condensing boiler', () => {
  // Computed: methane, 25 % excess air, no jacket loss.
  it.each([
    [30, 0.9745, 0.762],
    [40, 0.9517, 0.572],
    [50, 0.9146, 0.243],
    [55, 0.8879, 0],
    [80, 0.8769, 0],
  ])('with a flue of %s C: %s, of the water %s condensed', (celsius, efficiency, share) => {
    const flue = { fuel: methane, excessAir: 0.25, flueTemperature: celsius + 273.15, pressure: sea }
    expect(numberOf(condensingEfficiency({ ...flue, jacketLoss: 0 }))).toBeCloseTo(efficiency, 3)
    expect(numberOf(condensedShare(flue))).toBeCloseTo(share, 2)
  })

  // A trade article, read: never above 89 % with 180 F supply and 160 F return, 93 % or more with 120 F and 100 F.
  it('keeps the published bounds', () => {
    const flue = { fuel: methane, excessAir: 0.25, pressure: sea, jacketLoss: 0 }
    const at = (return_: string): number =>
      numberOf(condensingEfficiency({ ...flue, flueTemperature: si('temperature', return_) + 5 }))
    expect(at('160 F')).toBeLessThan(0.89)
    expect(at('100 F')).toBeGreaterThan(0.93)
  })

  it('condenses nothing in a flue above the boiling point', () => {
    expect(numberOf(condensedShare({ fuel: methane, excessAir: 0.25, flueTemperature: 400, pressure: sea }))).toBe(0)
  })

  // Siegert's formula by hand: 40 K x (0.66 / 16.1 + 0.009) = 2.0 %.
  it('has a dry flue loss of 2.0 % with 60 C and 4.8 % of oxygen', () => {
    const flue = { flueTemperature: 333.15, airTemperature: 293.15, oxygen: 0.048 }
    expect(numberOf(dryFlueLoss({ settings: analyzerSettings('natural-gas'), ...flue }))).toBeCloseTo(0.02, 4)
  })
})

describe('readings', () => {
  // Figures of the first sample house.
  it('42 ppm with 4.8 % oxygen are 54.5 ppm air free, and go with 9.09 % carbon dioxide', () => {
    expect(numberOf(carbonMonoxideAirFree({ carbonMonoxide: 42e-6, oxygen: 0.048 })) * 1e6).toBeCloseTo(54.5, 1)
    expect(numberOf(carbonDioxideFromOxygen({ oxygen: 0.048, mostCarbonDioxide: 0.118 })) * 100).toBeCloseTo(9.09, 2)
  })

  // By hand: 0.048 x 8.52 / (2 x (1 - 0.048 x 4.76)), where the analyzer's 4.8 / 16.1 makes 29.8 %.
  it('4.8 % oxygen of methane means 26.5 % excess air', () => {
    expect(numberOf(excessAir({ fuel: methane, oxygen: 0.048 }))).toBeCloseTo(0.265, 3)
  })

  // By hand: 0.6 / 16.1.
  it('20.3 % oxygen in the intake means that 3.7 % of it is flue gas', () => {
    expect(numberOf(flueGasInIntake({ intakeOxygen: 0.203, flueOxygen: 0.048 }))).toBeCloseTo(0.0373, 4)
  })

  it('plain air has no carbon monoxide to tell', () => {
    expect(carbonMonoxideAirFree({ carbonMonoxide: 42e-6, oxygen: 0.209 })).toMatchObject({ sized: false })
    expect(excessAir({ fuel: methane, oxygen: 0.215 })).toEqual({
      sized: false,
      why: 'A sample with 21.5 % of oxygen is plain air, not flue gas.',
    })
  })
})

describe('a printed slip', () => {
  // First sample house with the corrected flue temperature, and the fault of a planted reading: 4.8 % with 10.6 %.
  it('of the first sample house agrees with itself', () => {
    const gaps = slipGaps({
      fuel: 'natural-gas',
      oxygen: 0.048,
      carbonDioxide: 0.091,
      carbonMonoxide: 42e-6,
      carbonMonoxideAirFree: 55e-6,
      excessAir: 0.3,
      flueTemperature: si('temperature', '141 F'),
      returnTemperature: si('temperature', '131 F'),
      airTemperature: si('temperature', '70 F'),
      flueLoss: 0.02,
    })
    expect(gaps.map(({ figure }) => figure)).toEqual([
      'carbonDioxide',
      'carbonMonoxideAirFree',
      'excessAir',
      'flueLoss',
      'flueTemperature',
    ])
    const [dioxide, monoxide, air, loss, flue] = gaps.map(({ gap }) => numberOf(gap))
    expect(Math.abs(dioxide!)).toBeLessThan(0.004)
    expect(Math.abs(monoxide!)).toBeLessThan(1e-6)
    expect(Math.abs(air!)).toBeLessThan(0.005)
    expect(Math.abs(loss!)).toBeLessThan(0.001)
    expect(flue).toBeCloseTo(10 / 1.8, 6)
  })

  it('with 10.6 % carbon dioxide at 4.8 % oxygen is 1.5 % off', () => {
    const [gap] = slipGaps({ fuel: 'natural-gas', oxygen: 0.048, carbonDioxide: 0.106 })
    expect(numberOf(gap!.gap)).toBeCloseTo(0.0151, 4)
  })

  it('with a flue of 128 F and a return of 131 F shows what cannot be', () => {
    const temperatures = { flueTemperature: si('temperature', '128 F'), returnTemperature: si('temperature', '131 F') }
    expect(numberOf(slipGaps({ fuel: 'natural-gas', oxygen: 0.048, ...temperatures })[0]!.gap)).toBeLessThan(0)
  })

  it('with a printed number that is none tells the others all the same', () => {
    const gaps = slipGaps({
      fuel: 'propane',
      oxygen: 0.05,
      carbonDioxide: NaN,
      carbonMonoxide: 20e-6,
      carbonMonoxideAirFree: 26e-6,
    })
    expect(gaps.map(({ gap }) => gap.sized)).toEqual([false, true])
  })

  it('of plain air has no excess air', () => {
    expect(slipGaps({ fuel: 'propane', oxygen: 0.209, excessAir: 0.3 })[0]?.gap.sized).toBe(false)
  })
})

describe('air for a burner', () => {
  // By hand: 30 kW / 890.58 kJ/mol x 11.9 mol x 8.31446 x 263.15 K / 101,325 Pa.
  it('of 30 kW with 25 % excess air at -10 C: 8.66 L/s', () => {
    const intake = { fuel: methane, excessAir: 0.25, temperature: 263.15, pressure: sea, heatInput: 30_000 }
    expect(numberOf(combustionAirFlow(intake))).toBeCloseTo(0.00866, 5)
  })
})

describe('oxygen in the flue', () => {
  it('is none without excess air', () => {
    expect(numberOf(oxygenInFlue({ fuel: naturalGas, excessAir: 0 }))).toBe(0)
  })
})
