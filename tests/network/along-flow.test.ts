import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  betweenInFlow,
  downstreamOf,
  firstMet,
  upstreamOf,
  type AlongFlow,
  type Start,
} from '../../src/network/index.js'
import { networkOf, part, run, type House } from './build.js'
import { forget } from './forget.js'
import { isKind } from './questions.js'
import { anyHouse } from './random-house.js'
import { boiler, house, lines } from './ring-house.js'

const at = (name: string): Start => {
  const [component = '', port = ''] = name.split('.')
  return { component, port }
}
const ids = (things: AlongFlow['sure']): readonly string[] => things.map(({ id }) => id).sort()
const told = (answer: AlongFlow) => ({ sure: ids(answer.sure), possible: ids(answer.possible), open: answer.open })
const between = (whole: House, from: string, to: string): AlongFlow =>
  betweenInFlow(networkOf(whole), { from: at(from), to: at(to) })

describe('what stands along the flow', () => {
  it('is all that water comes to, nearest first, and no leg in which it stands', () => {
    const fed = downstreamOf(networkOf(house()), at('B1.supply'))
    expect(fed.sure.map(({ id }) => id).slice(0, 3)).toEqual(['T1', 'P1', 'H1'])
    expect(told(fed)).toEqual({ sure: ['H1', 'H2', 'P1', 'S1', 'S2', 'T1'], possible: [], open: false })
    expect(fed.witness(fed.sure[1]!)).toEqual(['B1.supply', 'T1', 'P1.in'])
  })

  it('is all that it has come by, against the flow', () => {
    const before = upstreamOf(networkOf(house()), at('P1.in'))
    expect(before.sure.map(({ id }) => id).slice(0, 2)).toEqual(['T1', 'B1'])
  })

  it('is what lies between two places, with the whole way by it', () => {
    const found = between(house(), 'P1.out', 'H2.branch1')
    expect(told(found)).toEqual({ sure: ['H1', 'S1'], possible: [], open: false })
    const check = found.sure.find(({ id }) => id === 'S1')!
    expect(found.witness(check)).toEqual(['P1.out', 'H1', 'S1.in', 'S1.out', 'H2.branch1'])
    expect(ids(between(house(), 'B1.supply', 'B1.return').sure)).toEqual(['H1', 'H2', 'P1', 'S1', 'S2', 'T1'])
  })

  it('stops where the water may not pass', () => {
    const fed = downstreamOf(networkOf(house()), at('B1.supply'), { things: isKind('header') })
    expect(told(fed)).toMatchObject({ sure: ['H1', 'P1', 'T1'], open: false })
  })

  it('is open where a line leads nobody knows where, and names the line', () => {
    const runs = lines.map((line) => (line.id === 'L-left' ? run('L-left', 'H1.branch1 unknown') : line))
    const fed = downstreamOf(networkOf(house(runs)), at('B1.supply'))
    expect([fed.open, ids(fed.sure).includes('S1'), ids(fed.sure).includes('S2')]).toEqual([true, false, true])
    expect(fed.missing).toContainEqual({ subject: 'L-left', fact: 'path' })
  })

  it('leaves a question where the beginning is not there', () => {
    expect(told(downstreamOf(networkOf(house()), at('B9.supply')))).toEqual({ sure: [], possible: [], open: true })
  })
})

const places = ['B1.supply', 'B1.return', 'P1.out'] as const
const answers = (whole: House): readonly AlongFlow[] => {
  const network = networkOf(whole)
  return places.flatMap((place) => [
    downstreamOf(network, at(place)),
    upstreamOf(network, at(place)),
    betweenInFlow(network, { from: at(place), to: at('B1.return') }),
  ])
}

describe('laws of what stands along the flow', () => {
  it('something forgotten makes no answer clearer', () => {
    const seen = new Set<string>()
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(), fc.nat()), { minLength: 1, maxLength: 4 }), (steps) => {
        const less = steps.reduce((left, [way, which]) => forget(left, way, which), house())
        const before = answers(house())
        for (const [index, after] of answers(less).entries()) {
          expect(ids(before[index]!.sure)).toEqual(expect.arrayContaining([...ids(after.sure)]))
          const isSettled = !after.open && after.possible.length === 0
          if (isSettled) expect(told(after)).toEqual(told(before[index]!))
          seen.add(String(isSettled))
        }
      }),
      { numRuns: 400 },
    )
    expect([...seen].sort()).toEqual(['false', 'true'])
  })

  it('what is met first is among it, and what is between is on both sides', () => {
    fc.assert(
      fc.property(anyHouse('some'), (some) => {
        const network = networkOf(some)
        const fed = downstreamOf(network, at('B1.supply'))
        const back = upstreamOf(network, at('B1.return'))
        const first = firstMet(network, at('B1.supply'), 'downstream', { isTarget: isKind('pump', 'tee', 'header') })
        expect(ids(fed.sure)).toEqual(expect.arrayContaining(first.sure.map(({ thing }) => thing.id)))
        const found = betweenInFlow(network, { from: at('B1.supply'), to: at('B1.return') })
        for (const id of ids(found.sure))
          expect([ids(fed.sure), ids(back.sure)].every((side) => side.includes(id))).toBe(true)
      }),
      { numRuns: 500 },
    )
  })

  it('things told in another order change nothing', () => {
    fc.assert(
      fc.property(anyHouse('some'), (some) => {
        const turned = { ...some, parts: some.parts.toReversed(), runs: some.runs.toReversed() }
        expect(answers(turned).map(told)).toEqual(answers(some).map(told))
      }),
      { numRuns: 500 },
    )
  })
})

describe('the cost of what stands along the flow', () => {
  it.each([50, 5_000, 25_000])('grows with the passages of a ring of %i couplings, not faster', (length) => {
    const couplings = Array.from({ length }, (_each, index) => `K${index}`)
    const network = networkOf({
      parts: [boiler, ...couplings.map((id) => part(id, 'coupling'))],
      runs: [{ id: 'L1', path: ['B1.supply', ...couplings, 'B1.return'] }],
    })
    const asked = [
      downstreamOf(network, at('B1.supply')),
      upstreamOf(network, at('B1.return')),
      betweenInFlow(network, { from: at('B1.supply'), to: at('B1.return') }),
    ]
    for (const { sure, visited } of asked) {
      expect(sure.length).toBe(length)
      expect(visited / length).toBeLessThan(20)
    }
  })
})
