import { describe, expect, it } from 'vitest'
import { type QuantityName, si } from '../../src/units/index.js'

interface CheckValue {
  readonly id: string
  readonly quantity: QuantityName
  readonly text: string
  readonly equals: string
  readonly tolerance: number
}

const nist = 'NIST SP 811, appendix B, recalled'

/** Conventional or exact definitions: NIST SP 811, appendix B (recalled, not read). */
const definitions: readonly CheckValue[] = [
  { id: 'u-btuh', quantity: 'heatRate', text: '1 Btu/h', equals: '0.29307107017222 W', tolerance: 1e-8 },
  { id: 'u-mbh', quantity: 'heatRate', text: '1 MBH', equals: '0.29307107017222 kW', tolerance: 1e-8 },
  { id: 'u-gal', quantity: 'volume', text: '1 gal', equals: '3.785411784 L', tolerance: 1e-8 },
  { id: 'u-psi', quantity: 'pressure', text: '1 psi', equals: '6894.757293168 Pa', tolerance: 1e-8 },
  { id: 'u-fth2o', quantity: 'pressure', text: '1 ft wc', equals: '2989.06692 Pa', tolerance: 1e-8 },
  { id: 'u-psiftw', quantity: 'pressure', text: '1 psi', equals: '2.3066587258501388 ft wc', tolerance: 1e-8 },
  { id: 'u-gpm', quantity: 'volumeFlow', text: '1 gpm', equals: '0.0630901964 L/s', tolerance: 1e-8 },
  { id: 'u-hddKF', quantity: 'temperatureDifference', text: '1 F', equals: '0.5555555555555556 K', tolerance: 1e-8 },
]

/** A trade conversion table, read. */
const tradeTable: readonly CheckValue[] = [
  { id: 'u-bhp', quantity: 'heatRate', text: '1 boiler hp', equals: '33475 Btu/h', tolerance: 2e-4 },
]

/** Tests of the open-source library fluids (test_fittings.py), read. */
const library: readonly CheckValue[] = [
  { id: 'u-kv', quantity: 'flowCoefficient', text: '1 Kv', equals: '1.1560992283536566 Cv', tolerance: 1e-8 },
]

describe('unit factors of the reference', () => {
  it.each(definitions)(`$id: $text is $equals (${nist})`, agrees)
  it.each(tradeTable)('$id: $text is $equals (trade conversion table)', agrees)
  it.each(library)('$id: $text is $equals (open-source library fluids)', agrees)
})

describe('unit factors of section 16, in the units amounts are held in', () => {
  it.each<[QuantityName, string, number]>([
    ['pressure', '1 in wc', 249.08891],
    ['mass', '1 lb', 0.45359237],
    ['volumeFlow', '1 cfh', 0.0283168 / 3600],
    ['energy', '1 therm', 105_505_585.262],
    ['energyPerVolume', '1 Btu/ft3', 1055.05585262 / 0.028316846592],
  ])('%s: %s', (quantity, text, expected) => {
    expect(si(quantity, text) / expected).toBeCloseTo(1, 5)
  })
})

function agrees({ quantity, text, equals, tolerance }: CheckValue): void {
  expect(Math.abs(si(quantity, text) / si(quantity, equals) - 1)).toBeLessThanOrEqual(tolerance)
}
