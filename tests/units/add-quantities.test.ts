import { describe, expect, it } from 'vitest'
import { addQuantities, comparableQuantities, quantityNames, secondsPerDay, si } from '../../src/units/index.js'

const scales = new Map([
  ['temperature', 'temperatureDifference'],
  ['date', 'time'],
])

describe('the quantity of a sum', () => {
  it.each(quantityNames.filter((name) => !scales.has(name)))('%s and %s again', (name) => {
    expect(addQuantities(name, name)).toBe(name)
  })

  it.each([...scales.keys()] as ('temperature' | 'date')[])('two of %s cannot be added', (name) => {
    expect(addQuantities(name, name)).toBeUndefined()
  })

  it('a step moves along its scale', () => {
    expect(addQuantities('temperature', 'temperatureDifference')).toBe('temperature')
    expect(addQuantities('temperatureDifference', 'temperature')).toBe('temperature')
    expect(addQuantities('date', 'time')).toBe('date')
    expect(addQuantities('time', 'date')).toBe('date')
  })

  it('nothing else adds up, in either order', () => {
    const pairs = quantityNames.flatMap((a) => quantityNames.map((b) => ({ a, b })))
    expect(pairs.every(({ a, b }) => addQuantities(a, b) === addQuantities(b, a))).toBe(true)
    const sums = pairs.filter(({ a, b }) => a !== b && addQuantities(a, b) !== undefined)
    expect(sums).toHaveLength(2 * scales.size)
  })

  it('dates move by days', () => {
    expect(si('date', '2023-07-01') + si('time', '10 days') / secondsPerDay).toBe(si('date', '2023-07-11'))
  })
})

describe('comparable quantities', () => {
  it('are the same quantity', () => {
    for (const a of quantityNames) {
      for (const b of quantityNames) expect(comparableQuantities(a, b)).toBe(a === b)
    }
  })
})
