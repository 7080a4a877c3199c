import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  compareNumbers,
  printIn,
  printPair,
  printQuantity,
  type QuantityName,
  quantityNames,
  si,
  type UnitSystem,
} from '../../src/units/index.js'

const systems: readonly UnitSystem[] = ['ip', 'si']

describe('amounts for reading', () => {
  it.each<[string, QuantityName, string, string]>([
    ['18 in', 'length', '18 in', '457 mm'],
    ['3/4 in', 'length', '0.75 in', '19 mm'],
    ['9 ft 11 in', 'length', '119 in', '3.02 m'],
    ['120 in', 'length', '10 ft', '3.05 m'],
    ['64.66 ft', 'length', '64.7 ft', '19.71 m'],
    ['143 in2', 'area', '143 in2', '923 cm2'],
    ['144 in2', 'area', '1 ft2', '929 cm2'],
    ['2180 ft2', 'area', '2180 ft2', '202.53 m2'],
    ['4.79 gal', 'volume', '4.79 gal', '18.1 L'],
    ['1386 ft3', 'volume', '1386 ft3', '39.25 m3'],
    ['140 F', 'temperature', '140 F', '60 C'],
    ['0 F', 'temperature', '0 F', '-17.8 C'],
    ['-12.3 F', 'temperature', '-12.3 F', '-24.6 C'],
    ['20 F', 'temperatureDifference', '20 F', '11.1 K'],
    ['16 psi', 'pressure', '16 psi', '110.3 kPa'],
    ['7 in wc', 'pressure', '0.25 psi', '1.7 kPa'],
    ['0.107 in wc', 'pressure', '0.0039 psi', '0.027 kPa'],
    ['0 psi', 'pressure', '0 psi', '0 kPa'],
    ['-5 psi', 'pressure', '-5 psi', '-34.5 kPa'],
    ['75000 Btu/h', 'heatRate', '75000 Btu/h', '21.98 kW'],
    ['3000 Btu/h', 'heatRate', '3000 Btu/h', '879 W'],
    ['7.68 VA', 'apparentPower', '7.68 VA', '7.68 VA'],
    ['7 gpm', 'volumeFlow', '7 gpm', '0.442 L/s'],
    ['250 cfh', 'gasFlow', '250 cfh', '7.08 m3/h'],
    ['30 s', 'time', '30 s', '30 s'],
    ['90 s', 'time', '90 s', '90 s'],
    ['10 min', 'time', '10 min', '10 min'],
    ['90 min', 'time', '90 min', '90 min'],
    ['24 h', 'time', '24 h', '24 h'],
    ['30 days', 'time', '30 days', '30 days'],
    ['18 months', 'time', '18 months', '18 months'],
    ['24 months', 'time', '2 years', '2 years'],
    ['95 %', 'fraction', '95 %', '95 %'],
    ['3/4', 'nominalSize', '3/4', '3/4'],
    ['1-1/4', 'nominalSize', '1-1/4', '1-1/4'],
    ['2"', 'nominalSize', '2', '2'],
    ['2024-07-01', 'date', '2024-07-01', '2024-07-01'],
    ['61', 'count', '61', '61'],
    ['1/4 in/ft', 'slope', '0.25 in/ft', '20.8 mm/m'],
    ['1025 Btu/ft3', 'energyPerVolume', '1025 Btu/ft3', '38.19 MJ/m3'],
    ['10 lb', 'mass', '10 lb', '4.54 kg'],
    ['120 V', 'voltage', '120 V', '120 V'],
    ['0.32 A', 'current', '0.32 A', '0.32 A'],
    ['7 gpg', 'concentration', '120 ppm', '120 ppm'],
    ['12.43 ft', 'head', '12.43 ft', '3.79 m'],
    ['7.5 Cv', 'flowCoefficient', '7.5 Cv', '6.49 Kv'],
    ['4.2 ft/s', 'velocity', '4.2 ft/s', '1.28 m/s'],
    ['580 Btu/h ft', 'heatRatePerLength', '580 Btu/h ft', '558 W/m'],
    ['30 Btu/h ft2', 'heatFlux', '30 Btu/h ft2', '94.6 W/m2'],
    ['1.5 h ft2 F/Btu', 'thermalResistance', '1.5 h ft2 F/Btu', '0.264 m2 K/W'],
    ['659 Btu/h F', 'heatLossCoefficient', '659 Btu/h F', '347.6 W/K'],
    ['5600 F days', 'degreeDays', '5600 F days', '3111 K days'],
    ['820 therms', 'energy', '820 therms', '24031.8 kWh'],
    ['8.2', 'number', '8.2', '8.2'],
    ['1.375', 'number', '1.38', '1.38'],
  ])('%s as %s', (text, quantity, ip, metric) => {
    expect(printQuantity(si(quantity, text), quantity, 'ip')).toBe(ip)
    expect(printQuantity(si(quantity, text), quantity, 'si')).toBe(metric)
  })

  it('prints round-off as nothing', () => {
    expect(printQuantity(-1e-15, 'length', 'ip')).toBe('0 in')
  })

  it('prints infinite ends as no limit', () => {
    expect(printQuantity(Infinity, 'pressure', 'ip')).toBe('no upper limit')
    expect(printQuantity(-Infinity, 'date', 'si')).toBe('no lower limit')
  })

  it.each(quantityNames)('does not print a %s that is not a number', (quantity) => {
    expect(() => printQuantity(NaN, quantity, 'ip')).toThrow(expect.objectContaining({ code: 'not-a-number' }) as Error)
  })
})

describe('two amounts side by side', () => {
  it.each<[string, string, QuantityName, [string, string]]>([
    ['11.98 in', '12 in', 'length', ['11.98 in', '12 in']],
    ['11 in', '12 in', 'length', ['11 in', '12 in']],
    ['1 ft', '12 in', 'length', ['12 in', '12 in']],
    ['9 ft', '11 ft', 'length', ['9 ft', '11 ft']],
    ['119.9999 F', '120 F', 'temperature', ['119.9999 F', '120 F']],
    ['30.001 psi', '30 psi', 'pressure', ['30.001 psi', '30 psi']],
    ['75000.2 Btu/h', '75000 Btu/h', 'heatRate', ['75000.2 Btu/h', '75000 Btu/h']],
    ['3/4', '1', 'nominalSize', ['3/4', '1']],
    ['0.7501', '3/4', 'nominalSize', ['0.7501', '3/4']],
  ])('%s and %s', (a, b, quantity, expected) => {
    expect(printPair(si(quantity, a), si(quantity, b), quantity, 'ip')).toEqual(expected)
  })

  it('tells a day from the same day later on', () => {
    expect(printPair(19_539, 19_539.5, 'date', 'ip')).toEqual(['2023-07-01', '2023-07-01 + 0.5 days'])
    expect(printPair(19_539, 19_539.01, 'date', 'ip')).toEqual(['2023-07-01', '2023-07-01 + 0.01 days'])
    expect(printPair(19_539.99, 19_540, 'date', 'ip')).toEqual(['2023-07-01', '2023-07-02'])
    expect(printPair(19_539.96, 19_539.99, 'date', 'ip')).toEqual(['2023-07-01 + 0.96 days', '2023-07-01 + 0.99 days'])
  })

  it('prints an infinite end beside a number', () => {
    expect(printPair(Infinity, si('pressure', '30 psi'), 'pressure', 'ip')).toEqual(['no upper limit', '30 psi'])
    expect(printPair(-Infinity, Infinity, 'length', 'ip')).toEqual(['no lower limit', 'no upper limit'])
  })

  it('never hides a comparison, and never invents one', () => {
    const amount = fc.double({ min: 1e-6, max: 1e9, noNaN: true })
    const nearby = fc.double({ min: 1 - 1e-6, max: 1 + 1e-6, noNaN: true })
    fc.assert(
      fc.property(
        fc.constantFrom(...quantityNames),
        fc.constantFrom(...systems),
        amount,
        fc.oneof(nearby, amount),
        (quantity, system, a, factor) => {
          const b = a * factor
          const [printedA, printedB] = printPair(a, b, quantity, system)
          expect(printedA === printedB).toBe(compareNumbers(a, b) === 0)
        },
      ),
      { numRuns: 2000 },
    )
  })

  it('keeps the order of the numbers', () => {
    const amount = fc.double({ min: 1e-3, max: 1e6, noNaN: true })
    fc.assert(
      fc.property(fc.constantFrom(...systems), amount, amount, (system, a, b) => {
        const [printedA, printedB] = printPair(a, b, 'length', system).map(parseFloat)
        expect(Math.sign(printedA! - printedB!)).toBe(compareNumbers(a, b))
      }),
    )
  })
})

describe('a unit of choice', () => {
  it('prints gas in the units of gas', () => {
    expect(printIn(si('pressure', '7 in wc'), 'pressure', 'in wc', 2)).toBe('7 in wc')
    expect(printIn(si('pressure', '0.107 in wc'), 'pressure', 'in. w.c.', 3)).toBe('0.107 in wc')
    expect(printIn(si('volumeFlow', '73.2 cfh'), 'volumeFlow', 'cfh', 0)).toBe('73 cfh')
  })

  it('refuses a unit of another quantity', () => {
    expect(() => printIn(1, 'pressure', 'ft', 2)).toThrow(
      expect.objectContaining({ code: 'unwritable-quantity' }) as Error,
    )
  })
})
