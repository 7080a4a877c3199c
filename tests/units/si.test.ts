import { describe, expect, it } from 'vitest'
import { parseQuantity, type SI, si, UnitError } from '../../src/units/index.js'

function headOf(pressure: SI<'pressure'>): number {
  return pressure / 9806.65
}

describe('si', () => {
  it('reads what is well written', () => {
    expect(si('pressure', '1 bar')).toBe(100_000)
    expect(si('date', '1970-01-02')).toBe(1)
  })

  it('throws what reading refuses, with the same words', () => {
    const parsed = parseQuantity('18', 'length')
    expect(() => si('length', '18')).toThrow(UnitError)
    expect(() => si('length', '18')).toThrow(
      expect.objectContaining({
        code: 'unreadable-quantity',
        message: parsed.ok ? '' : parsed.message,
        suggestion: '18 in',
      }) as Error,
    )
  })

  it('wants a date to name its day', () => {
    expect(() => si('date', '2024-07')).toThrow(expect.objectContaining({ code: 'unreadable-quantity' }) as Error)
  })

  it('keeps quantities apart by type', () => {
    expect(headOf(si('pressure', '98066.5 Pa'))).toBe(10)
    // @ts-expect-error a length is no pressure
    expect(headOf(si('length', '10 m'))).toBeCloseTo(0.00102, 5)
  })
})
