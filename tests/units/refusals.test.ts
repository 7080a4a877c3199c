import { describe, expect, it } from 'vitest'
import { parseQuantity, type QuantityName, quantityNames } from '../../src/units/index.js'

function refused(text: string, quantity: QuantityName): { message: string; suggestion: string | undefined } {
  const parsed = parseQuantity(text, quantity)
  if (parsed.ok) throw new Error(`${text} was read as ${parsed.low}`)
  return { message: parsed.message, suggestion: parsed.suggestion }
}

describe('a number without a unit', () => {
  it.each<[string, QuantityName, string]>([
    ['18', 'length', '18 in'],
    ['3/4', 'length', '3/4 in'],
    ['2180', 'area', '2180 ft2'],
    ['10.3', 'volume', '10.3 gal'],
    ['140', 'temperature', '140 F'],
    ['20', 'temperatureDifference', '20 F'],
    ['30', 'pressure', '30 psi'],
    ['75,000', 'heatRate', '75000 Btu/h'],
    ['7.68', 'apparentPower', '7.68 VA'],
    ['7', 'volumeFlow', '7 gpm'],
    ['10', 'time', '10 min'],
    ['0.95', 'fraction', '95 %'],
    ['0.07', 'fraction', '7 %'],
    ['95', 'fraction', '95 %'],
    ['1/4', 'slope', '1/4 in/ft'],
    ['1025', 'energyPerVolume', '1025 Btu/ft3'],
    ['10', 'mass', '10 lb'],
    ['24', 'voltage', '24 V'],
    ['15', 'current', '15 A'],
    ['12.4', 'head', '12.4 ft'],
    ['7.5', 'flowCoefficient', '7.5 Cv'],
    ['4', 'velocity', '4 ft/s'],
    ['580', 'heatRatePerLength', '580 Btu/h ft'],
    ['30', 'heatFlux', '30 Btu/h ft2'],
    ['1.5', 'thermalResistance', '1.5 h ft2 F/Btu'],
    ['659', 'heatLossCoefficient', '659 Btu/h F'],
    ['820', 'energy', '820 therms'],
    ['42', 'concentration', '42 ppm'],
  ])('%s as %s is met with %s', (text, quantity, suggestion) => {
    const answer = refused(text, quantity)
    expect(answer.message).toContain('has no unit')
    expect(answer.suggestion).toBe(suggestion)
    expect(parseQuantity(suggestion, quantity).ok).toBe(true)
  })

  it('is not suggested where it could not be', () => {
    expect(refused('-5', 'length').suggestion).toBeUndefined()
    expect(refused('-500', 'temperature').suggestion).toBeUndefined()
  })

  it('says what to write, word for word', () => {
    expect(refused('18', 'length').message).toBe('"18" has no unit; a length is written with in, ft, m, mm or cm')
  })
})

describe('a unit of something else', () => {
  it.each<[string, QuantityName, string, string]>([
    ['30 ft', 'pressure', 'is a length', 'a pressure is written with psi, in wc'],
    ['30 psi', 'length', 'is a pressure', 'a length is written with in, ft'],
    ['7 gpm', 'heatRate', 'is a volume flow', 'a heat rate is written with Btu/h'],
    ['5 ft2', 'length', 'is an area', 'a length is written with'],
    ['100 m', 'time', 'is a length', 'a time is written with min'],
    ['20 mm', 'nominalSize', 'is a length', 'a nominal size is written with in'],
    ['22 kW', 'apparentPower', 'is a heat rate', 'an apparent power is written with VA'],
    ['30 lb', 'pressure', 'is a mass', 'a pressure is written with psi'],
    ['5 psi', 'head', 'is a pressure', 'a head is written with ft'],
    ['40 W', 'heatLossCoefficient', 'is a heat rate', 'a heat loss coefficient is written with Btu/h F'],
    ['2 kWh', 'heatRate', 'is an energy', 'a heat rate is written with Btu/h'],
  ])('%s is no %s', (text, quantity, is, expected) => {
    const { message } = refused(text, quantity)
    expect(message).toContain(is)
    expect(message).toContain(expected)
  })
})

describe('a unit nobody knows', () => {
  it.each<[string, QuantityName, string | undefined]>([
    ['30 psj', 'pressure', '30 psi'],
    ['7 in wcc', 'pressure', '7 in wc'],
    ['7 gmp', 'volumeFlow', '7 gpm'],
    ['75,000 Btu/g', 'heatRate', '75000 Btu/h'],
    ['10 gallns', 'volume', '10 gal'],
    ['3 M', 'length', '3 m'],
    ['5 mPa', 'pressure', '5 MPa'],
    ['5 ma', 'current', '5 mA'],
    ['20 zz', 'pressure', undefined],
    ['5 __proto__', 'length', undefined],
    ['5 constructor', 'pressure', undefined],
  ])('%s as %s', (text, quantity, suggestion) => {
    const answer = refused(text, quantity)
    expect(answer.message).toMatch(/is not known; an? [a-z ]+ is written with/)
    expect(answer.suggestion).toBe(suggestion)
  })

  it.each<[string, QuantityName, string]>([
    ['80 MBtu/h', 'heatRate', 'kBtu/h or MMBtu/h'],
    ['44 psia', 'pressure', 'gauge'],
    ['2 bara', 'pressure', 'gauge'],
    ['12 ft wc', 'head', 'height of the fluid itself'],
    ['5 MBtu', 'energy', 'kBtu or MMBtu'],
  ])('%s has two meanings or another zero', (text, quantity, says) => {
    expect(refused(text, quantity).message).toContain(says)
  })
})

describe('a number that is none', () => {
  it.each<[string, QuantityName]>([
    ['', 'length'],
    ['   ', 'pressure'],
    ['unknown', 'pressure'],
    ['none', 'length'],
    ['NaN psi', 'pressure'],
    ['Infinity ft', 'length'],
    ['-Infinity F', 'temperature'],
    ['in', 'length'],
    ['. in', 'length'],
    ['1.2.3 m', 'length'],
    ['1/2/3 in', 'length'],
    ['1/0 in', 'length'],
    ['1-5/4 in', 'length'],
    ['5-6 ft', 'length'],
    ['7,50 W', 'heatRate'],
    ['75,0000 W', 'heatRate'],
    [',500 W', 'heatRate'],
    ['1,5 m', 'length'],
    ['120/240 V', 'voltage'],
    ['40/80 MBH', 'heatRate'],
    ['0x10 m', 'length'],
    ['--5 F', 'temperature'],
    ['5 6 in', 'length'],
    [`5' 13"`, 'length'],
    [`5' 6`, 'length'],
    ['5 ft 6', 'length'],
    ['5 ft 6 psi', 'length'],
    [`5.5' 6"`, 'length'],
    ['2.5', 'count'],
    ['-1', 'count'],
    ['1,000', 'count'],
    ['1e3', 'count'],
    ['3 pieces', 'count'],
    ['9999999999999999', 'count'],
    ['', 'number'],
    ['pH', 'number'],
    ['13/10', 'number'],
    ['1e16', 'number'],
    ['1e999', 'number'],
  ])('%j as %s', (text, quantity) => {
    expect(refused(text, quantity).message).not.toBe('')
  })

  it('a voltage over another is not half a volt', () => {
    expect(refused('120/240 V', 'voltage').message).toBe(
      '"120/240 V" has one number over another; a voltage is written with V or mV, in decimals',
    )
  })

  it.each<[string, QuantityName, string]>([
    [`5' 6`, 'length', '5 ft 6 in'],
    ['5 ft 6-1/2', 'length', '5 ft 6-1/2 in'],
    ['3 pieces', 'count', '3'],
    ['2.0', 'count', '2'],
    ['1,000', 'count', '1000'],
    ['8.2 pH', 'number', '8.2'],
  ])('%j as %s is met with %j', (text, quantity, suggestion) => {
    expect(refused(text, quantity).suggestion).toBe(suggestion)
    expect(parseQuantity(suggestion, quantity).ok).toBe(true)
  })
})

describe('an amount that cannot be', () => {
  it.each<[string, QuantityName, string]>([
    ['-1 in', 'length', 'never negative'],
    ['-1 ft2', 'area', 'never negative'],
    ['-1 gal', 'volume', 'never negative'],
    ['-1 W', 'heatRate', 'never negative'],
    ['-1 VA', 'apparentPower', 'never negative'],
    ['-1 gpm', 'volumeFlow', 'never negative'],
    ['-1 min', 'time', 'never negative'],
    ['-1 %', 'fraction', 'never negative'],
    ['-3/4', 'nominalSize', 'never negative'],
    ['-1 lb', 'mass', 'never negative'],
    ['-1 Btu/ft3', 'energyPerVolume', 'never negative'],
    ['-460 F', 'temperature', 'absolute zero'],
    ['-273.2 C', 'temperature', 'absolute zero'],
    ['-1 K', 'temperature', 'absolute zero'],
    ['-14.7 psi', 'pressure', 'full vacuum'],
    ['1e16 m', 'length', 'beyond'],
    ['1e400 m', 'length', 'beyond'],
    ['-1e400 K', 'temperatureDifference', 'beyond'],
    ['1e13 Btu/ft3', 'energyPerVolume', 'beyond'],
  ])('%s as %s', (text, quantity, because) => {
    expect(refused(text, quantity).message).toContain(because)
  })
})

describe('hostile texts', () => {
  it.each(quantityNames)('end in a short message for %s', (quantity) => {
    for (const piece of ['1', '1,', '9/', ' ', "'", '"', '-', '1e', 'in ', '\u0000', '½']) {
      const { message } = refused(piece.repeat(100_000), quantity)
      expect(message.length).toBeLessThan(200)
    }
  })
})
