import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  parseQuantity,
  type QuantityName,
  quantityNames,
  type UnitSystem,
  writeQuantity,
} from '../../src/units/index.js'

const systems: readonly UnitSystem[] = ['ip', 'si']
const cases = quantityNames.flatMap((quantity) => systems.map((system) => ({ quantity, system })))

const maySinkBelowZero = new Set<QuantityName>(['temperatureDifference', 'slope', 'voltage', 'current', 'number'])

function amounts(quantity: QuantityName): fc.Arbitrary<number> {
  const positive = fc.double({ min: 1e-12, max: 1e12, noNaN: true })
  if (quantity === 'date') return fc.integer({ min: -719_528, max: 2_932_896 })
  if (quantity === 'count') return fc.integer({ min: 0, max: 1e14 })
  if (quantity === 'temperature') return fc.double({ min: 1, max: 1e6, noNaN: true })
  if (quantity === 'pressure') return fc.oneof(positive, fc.double({ min: -101_325, max: -1e-9, noNaN: true }))
  const negative = positive.map((amount) => -amount)
  return maySinkBelowZero.has(quantity)
    ? fc.oneof(positive, negative, fc.constant(0))
    : fc.oneof(positive, fc.constant(0))
}

describe('what is written is read back', () => {
  it.each(cases)('$quantity in $system', ({ quantity, system }) => {
    fc.assert(
      fc.property(amounts(quantity), (amount) => {
        const text = writeQuantity(amount, quantity, system)
        const parsed = parseQuantity(text, quantity)
        if (!parsed.ok) throw new Error(parsed.message)
        expect(parsed.high).toBe(parsed.low)
        expect(Math.abs(parsed.low - amount)).toBeLessThanOrEqual(1e-12 * Math.abs(amount))
      }),
      { numRuns: 300 },
    )
  })

  it.each(cases)('$quantity in $system: written twice is written the same', ({ quantity, system }) => {
    fc.assert(
      fc.property(amounts(quantity), (amount) => {
        const text = writeQuantity(amount, quantity, system)
        const parsed = parseQuantity(text, quantity)
        const again = parsed.ok ? parseQuantity(writeQuantity(parsed.low, quantity, system), quantity) : parsed
        if (!parsed.ok || !again.ok) throw new Error(text)
        expect(Math.abs(again.low - parsed.low)).toBeLessThanOrEqual(2e-14 * Math.abs(parsed.low))
      }),
    )
  })
})

describe('written texts', () => {
  it.each<[string, QuantityName, UnitSystem, string]>([
    ['16 psi', 'pressure', 'ip', '16 psi'],
    ['16 psi', 'pressure', 'si', '110.316116690688 kPa'],
    ['0 F', 'temperature', 'ip', '0 F'],
    ['140 F', 'temperature', 'si', '60 C'],
    ['1-1/4', 'nominalSize', 'si', '1-1/4'],
    ['0.3', 'nominalSize', 'ip', '0.3'],
    ['30 ft', 'length', 'ip', '30 ft'],
    ['11.875 in', 'length', 'ip', '11.875 in'],
    ['2024-02-29', 'date', 'ip', '2024-02-29'],
    ['33.3 %', 'fraction', 'si', '33.3 %'],
    ['24 months', 'time', 'ip', '2 years'],
  ])('%s as %s in %s', (given, quantity, system, expected) => {
    const parsed = parseQuantity(given, quantity)
    expect(parsed.ok && writeQuantity(parsed.low, quantity, system)).toBe(expected)
  })

  it.each([Infinity, -Infinity, NaN])('%s cannot be written', (value) => {
    expect(() => writeQuantity(value, 'length', 'ip')).toThrow(
      expect.objectContaining({ code: 'unwritable-quantity' }) as Error,
    )
  })
})
