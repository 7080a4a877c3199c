import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { applyEdits, forgettable, type Edit, type PlainMap } from '../../../src/model/editing/index.js'
import { canonical, houses, settings, shuffled } from './houses.js'
import { deepFreeze, model, problemsIn } from './sample.js'

const forgetting = (document: PlainMap, address: string): PlainMap => apply(document, [{ forget: address }])

function apply(document: PlainMap, edits: readonly Edit[]): PlainMap {
  const result = applyEdits(document, edits, model)
  if (!result.ok) throw new Error(result.problems.map((problem) => problem.message).join(' '))
  return result.document
}

const houseAndAddress = houses.chain((house) =>
  fc.constantFrom(...forgettable(house, model)).map((address) => ({ house, address })),
)

describe('laws of forgetting', () => {
  it('what can be forgotten can be forgotten, in any order, and leaves a document that can be read', () => {
    fc.assert(
      fc.property(houses, fc.array(fc.nat(), { maxLength: 12 }), (house, picks) => {
        const end = picks.reduce<PlainMap>((sofar, pick) => {
          const addresses = forgettable(sofar, model)
          const address = addresses[pick % Math.max(1, addresses.length)]
          return address === undefined ? sofar : forgetting(sofar, address)
        }, house)
        expect(problemsIn(end)).toEqual([])
      }),
    )
  })

  it('each time strictly less can be forgotten', () => {
    fc.assert(
      fc.property(houseAndAddress, ({ house, address }) => {
        const before = forgettable(house, model)
        const after = forgettable(forgetting(house, address), model)
        expect(after).not.toContain(address)
        expect(after.filter((one) => !before.includes(one))).toEqual([])
      }),
    )
  })

  it('counts stay, unless they are what is forgotten', () => {
    fc.assert(
      fc.property(houseAndAddress, ({ house, address }) => {
        fc.pre(!/^(complete|none)/.test(address))
        const after = forgetting(house, address)
        expect([after['complete'], after['none']]).toEqual([house['complete'], house['none']])
      }),
    )
  })

  it('forgetting twice is forgetting once, and order does not matter', () => {
    const pairs = houses.chain((house) => {
      const address = fc.constantFrom(...forgettable(house, model))
      return fc.record({ house: fc.constant(house), one: address, other: address })
    })
    fc.assert(
      fc.property(pairs, ({ house, one, other }) => {
        fc.pre(forgettable(forgetting(house, one), model).includes(other))
        fc.pre(forgettable(forgetting(house, other), model).includes(one))
        expect(canonical(forgetting(forgetting(house, one), other))).toEqual(
          canonical(forgetting(forgetting(house, other), one)),
        )
      }),
    )
  })

  it('setting a value and forgetting it is forgetting it', () => {
    fc.assert(
      fc.property(houses, settings, (house, { set, to }) => {
        fc.pre(applyEdits(house, [{ forget: set }], model).ok)
        expect(apply(house, [{ set, to }, { forget: set }])).toEqual(forgetting(house, set))
      }),
    )
  })
})

describe('laws of edits', () => {
  const edits: fc.Arbitrary<Edit> = fc.oneof(
    settings,
    fc
      .constantFrom('B1', 'RV1', 'ISO1', 'C1', 'EX1', 'ZV1', 'VT1', 'VT1/door', 'L1', 'state hot', 'nothing')
      .map((remove) => ({ remove })),
    fc.constantFrom('B1', 'ZV2', 'L1', 'site', 'none', 'lines', 'ZV1.power', 'nothing').map((forget) => ({ forget })),
    fc.constantFrom('N1', 'B1').map((id) => ({ insert: { id, kind: 'airVent' } })),
  )

  it('the document given is left alone', () => {
    fc.assert(
      fc.property(houses, fc.array(edits, { maxLength: 5 }), (house, list) => {
        const text = JSON.stringify(house)
        applyEdits(deepFreeze(house), list, model)
        expect(JSON.stringify(house)).toBe(text)
      }),
    )
  })

  it('all are made or none', () => {
    fc.assert(
      fc.property(houses, fc.array(edits, { maxLength: 5 }), fc.nat(), (house, list, at) => {
        const position = at % (list.length + 1)
        const result = applyEdits(house, list.toSpliced(position, 0, { remove: 'NOWHERE' }), model)
        expect(result.ok).toBe(false)
        expect(result).not.toHaveProperty('document')
        expect(result.ok || result.problems.some((problem) => problem.pointer === `/edits/${position}`)).toBe(true)
      }),
    )
  })

  it('edits at once are edits one by one', () => {
    fc.assert(
      fc.property(houses, fc.array(edits, { maxLength: 5 }), (house, list) => {
        const atOnce = applyEdits(house, list, model)
        fc.pre(atOnce.ok)
        expect(list.reduce<PlainMap>((sofar, edit) => apply(sofar, [edit]), house)).toEqual(atOnce.document)
      }),
    )
  })

  it('the order of lists does not matter', () => {
    fc.assert(
      fc.property(houses, fc.array(edits, { maxLength: 4 }), fc.nat(), (house, list, seed) => {
        const [plain, mixed] = [applyEdits(house, list, model), applyEdits(shuffled(house, seed), list, model)]
        expect(mixed.ok).toBe(plain.ok)
        expect(mixed.ok && canonical(mixed.document)).toEqual(plain.ok && canonical(plain.document))
      }),
    )
  })

  it('inserting a thing and removing it changes nothing', () => {
    fc.assert(
      fc.property(houses, (house) => {
        const edit = { insert: { id: 'N1', kind: 'isolationValve' }, in: 'L1', after: 'B1.supply' }
        fc.pre(applyEdits(house, [edit], model).ok)
        expect(apply(house, [edit, { remove: 'N1' }])).toEqual(house)
      }),
    )
  })
})
