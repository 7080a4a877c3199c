import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { nearestName } from '../../src/units/index.js'

const kinds = ['boiler', 'reliefValve', 'drainReceptor', 'zoneValve', 'tee']

describe('the nearest name', () => {
  it.each([
    ['boilr', 'boiler'],
    ['BOILER', 'boiler'],
    ['reliefvalve', 'reliefValve'],
    ['releifValve', 'reliefValve'],
    ['drainReceptacle', 'drainReceptor'],
    ['te', 'tee'],
  ])('of %s is %s', (word, name) => {
    expect(nearestName(word, kinds)).toBe(name)
  })

  it.each(['chimney', 'xy', 'x', '', 'boilerhouse'])('of %j is none', (word) => {
    expect(nearestName(word, kinds)).toBeUndefined()
  })

  it('is none among none', () => {
    expect(nearestName('boiler', [])).toBeUndefined()
  })

  it('is the first of equals', () => {
    expect(nearestName('cat', ['bat', 'rat'])).toBe('bat')
  })

  it('does not let a third of a short word pass for a likeness', () => {
    expect(nearestName('zz', ['m', 'in', 'ft'])).toBeUndefined()
  })

  it('of a known name is that name', () => {
    fc.assert(fc.property(fc.constantFrom(...kinds), (name) => nearestName(name, kinds) === name))
  })

  it('of a word of a million letters is none', () => {
    expect(nearestName('b'.repeat(1_000_000), kinds)).toBeUndefined()
  })
})
