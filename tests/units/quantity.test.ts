import { describe, expect, it } from 'vitest'
import {
  parseQuantity,
  printIn,
  printPair,
  printQuantity,
  quantityNames,
  si,
  writeQuantity,
} from '../../src/units/index.js'

describe('quantity names', () => {
  it('cannot be changed', () => {
    expect(Object.isFrozen(quantityNames)).toBe(true)
    expect(new Set(quantityNames).size).toBe(31)
  })
})

describe('the examples of the documentation', () => {
  it('say what comes out', () => {
    expect(parseQuantity('7" wc', 'pressure')).toEqual({ ok: true, low: 1743.62237, high: 1743.62237 })
    expect(printQuantity(si('pressure', '16 psi'), 'pressure', 'si')).toBe('110.3 kPa')
    expect(printPair(si('length', '11.98 in'), si('length', '12 in'), 'length', 'ip')).toEqual(['11.98 in', '12 in'])
    expect(printIn(si('pressure', '7 in wc'), 'pressure', 'in wc', 2)).toBe('7 in wc')
    expect(writeQuantity(si('heatRate', '22 kW'), 'heatRate', 'ip')).toBe('75067.115928815 Btu/h')
  })
})
