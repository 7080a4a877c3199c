import fc from 'fast-check'
import { unit } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { type QuantityName, si } from '../../src/units/index.js'

/** [quantity, our unit, the unit of mathjs, the unit we hold in]. */
const pairs: readonly (readonly [QuantityName, string, string, string])[] = [
  ['length', 'in', 'in', 'm'],
  ['length', 'ft', 'ft', 'm'],
  ['length', 'mm', 'mm', 'm'],
  ['length', 'cm', 'cm', 'm'],
  ['area', 'ft2', 'ft^2', 'm^2'],
  ['area', 'in2', 'in^2', 'm^2'],
  ['area', 'cm2', 'cm^2', 'm^2'],
  ['area', 'mm2', 'mm^2', 'm^2'],
  ['volume', 'gal', 'gallon', 'm^3'],
  ['volume', 'qt', 'quart', 'm^3'],
  ['volume', 'L', 'L', 'm^3'],
  ['volume', 'mL', 'mL', 'm^3'],
  ['volume', 'ft3', 'ft^3', 'm^3'],
  ['volume', 'in3', 'in^3', 'm^3'],
  ['temperature', 'F', 'degF', 'K'],
  ['temperature', 'C', 'degC', 'K'],
  ['pressure', 'psi', 'psi', 'Pa'],
  ['pressure', 'bar', 'bar', 'Pa'],
  ['pressure', 'mbar', 'mbar', 'Pa'],
  ['pressure', 'kPa', 'kPa', 'Pa'],
  ['pressure', 'MPa', 'MPa', 'Pa'],
  ['heatRate', 'Btu/h', 'BTU/hour', 'W'],
  ['heatRate', 'kW', 'kW', 'W'],
  ['volumeFlow', 'gpm', 'gallon/minute', 'm^3/s'],
  ['volumeFlow', 'gph', 'gallon/hour', 'm^3/s'],
  ['volumeFlow', 'L/min', 'L/minute', 'm^3/s'],
  ['volumeFlow', 'm3/h', 'm^3/hour', 'm^3/s'],
  ['volumeFlow', 'cfh', 'ft^3/hour', 'm^3/s'],
  ['volumeFlow', 'cfm', 'ft^3/minute', 'm^3/s'],
  ['time', 'min', 'minute', 's'],
  ['time', 'h', 'hour', 's'],
  ['time', 'days', 'day', 's'],
  ['time', 'weeks', 'week', 's'],
  ['time', 'months', 'month', 's'],
  ['time', 'years', 'year', 's'],
  ['slope', 'in/ft', 'in/ft', 'm/m'],
  ['energyPerVolume', 'Btu/ft3', 'BTU/ft^3', 'J/m^3'],
  ['energyPerVolume', 'Btu/gal', 'BTU/gallon', 'J/m^3'],
  ['energyPerVolume', 'kWh/m3', 'kW hour/m^3', 'J/m^3'],
  ['mass', 'lb', 'lbm', 'kg'],
  ['mass', 'oz', 'ounce', 'kg'],
  ['mass', 'g', 'g', 'kg'],
  ['current', 'mA', 'mA', 'A'],
  ['head', 'ft', 'ft', 'm'],
  ['velocity', 'ft/s', 'ft/s', 'm/s'],
  ['heatRatePerLength', 'Btu/h ft', 'BTU/hour/ft', 'W/m'],
  ['heatFlux', 'Btu/h ft2', 'BTU/hour/ft^2', 'W/m^2'],
  ['energy', 'Btu', 'BTU', 'J'],
  ['energy', 'kWh', 'kW hour', 'J'],
]

describe('agreement with the units of mathjs', () => {
  it.each(pairs)('%s in %s', (quantity, ours, theirs, held) => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e6, noNaN: true }), (number) => {
        const expected = held === 'm/m' ? unit(number, theirs).toSI().toNumber() : unit(number, theirs).toNumber(held)
        expect(Math.abs(si(quantity, `${number} ${ours}`) / expected - 1)).toBeLessThan(1e-9)
      }),
      { numRuns: 30 },
    )
  })
})
