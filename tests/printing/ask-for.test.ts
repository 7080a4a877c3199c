import { describe, expect, it } from 'vitest'
import { choice, listOf, quantity, reference, text } from '../../src/model/index.js'
import { askFor, writtenLike } from '../../src/printing/ask-for.js'
import { parseQuantity, quantityNames } from '../../src/units/index.js'

describe('what an answer looks like', () => {
  it.each(quantityNames)('shows a %s that can be read', (name) => {
    expect(parseQuantity(writtenLike[name], name)).toMatchObject({ ok: true })
  })

  it.each([
    [quantity('pressure'), 'such as 30 psi'],
    [choice({ plain: 'plain end', capped: 'capped end' }), 'plain, capped'],
    [reference(['boiler', 'waterHeater']), 'the id of boiler or waterHeater'],
    [listOf(choice({ a: 'A', b: 'B' })), 'a list of a, b'],
    [text, 'in words'],
  ])('%j', (type, expected) => {
    expect(askFor(type)).toBe(expected)
  })
})
