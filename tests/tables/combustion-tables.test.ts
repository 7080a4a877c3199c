import { describe, expect, it } from 'vitest'
import {
  analyzerSettings,
  combustionAirFigure,
  fuelNamed,
  type FuelName,
  highestVentTemperature,
} from '../../src/tables/index.js'
import { si } from '../../src/units/index.js'

describe('the table of fuels', () => {
  it.each<FuelName>(['methane', 'natural-gas', 'propane'])('%s has parts that make up a mole', (name) => {
    const { parts, nitrogen, carbonDioxide } = fuelNamed(name)
    expect(parts.reduce((sum, { share }) => sum + share, nitrogen + carbonDioxide)).toBeCloseTo(1, 9)
  })

  // Handbook of a flue gas analyzer.
  it('has the settings of analyzers', () => {
    expect(analyzerSettings('natural-gas')).toEqual({ mostCarbonDioxide: 0.118, lossFactor: 0.66, lossConstant: 0.009 })
    expect(analyzerSettings('propane').mostCarbonDioxide).toBe(0.138)
  })
})

describe('the table of vent materials', () => {
  // ULC S636: class II to 135 C, class I from there to 245 C.
  it('has plastics within class II and steel within class I or above', () => {
    expect(highestVentTemperature('polypropylene')).toBeLessThanOrEqual(si('temperature', '135 C'))
    expect(highestVentTemperature('superferritic-stainless-steel')).toBeGreaterThan(si('temperature', '245 C'))
  })

  // Plumbing plastics bend under load at 158 F (PVC) and 210 F (CPVC): deflection temperatures, read.
  it('keeps plastics below the temperature at which they bend', () => {
    expect(highestVentTemperature('pvc')).toBeLessThan(si('temperature', '158 F'))
    expect(highestVentTemperature('cpvc')).toBeLessThan(si('temperature', '210 F'))
  })
})

describe('the table of combustion air', () => {
  it('is told for a watt', () => {
    const thousand = si('heatRate', '1000 Btu/h')
    expect(combustionAirFigure('indoor-volume') * thousand).toBeCloseTo(si('volume', '50 ft3'), 9)
    expect(combustionAirFigure('opening-outdoors-direct') * 4 * thousand).toBeCloseTo(si('area', '1 in2'), 12)
    expect(combustionAirFigure('mechanical-supply') * thousand).toBeCloseTo(si('volumeFlow', '0.35 cfm'), 12)
  })
})
