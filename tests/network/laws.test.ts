import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { everyWayPasses, reachedThings, reachesWithout } from '../../src/network/index.js'
import { networkOf, part, run, type House } from './build.js'
import { forget } from './forget.js'
import { oracleReaches } from './oracle.js'
import { answersOf, isIronDrain, isKind, reliefFrom, water } from './questions.js'
import { anyHouse } from './random-house.js'

const forgetting = fc.array(fc.tuple(fc.nat(), fc.nat()), { minLength: 1, maxLength: 6 })
const ids = (things: readonly { readonly id: string }[]): readonly string[] => things.map(({ id }) => id).sort()

describe('forgetting', () => {
  it('turns an answer into "cannot be told" or leaves it, and never turns it round', () => {
    const seen = new Map<string, number>()
    fc.assert(
      fc.property(anyHouse('some'), forgetting, (house, steps) => {
        const before = answersOf(networkOf(house), house)
        const less = steps.reduce((left, [way, which]) => forget(left, way, which), house)
        const after = answersOf(networkOf(less), less)
        after.truths.forEach((truth, index) => {
          const was = before.truths[index]!
          seen.set(`${was} ${truth}`, (seen.get(`${was} ${truth}`) ?? 0) + 1)
          expect(truth === was || truth === 0, `question ${index}: ${was} became ${truth}`).toBe(true)
        })
        after.reached.forEach((reached, index) => {
          const was = before.reached[index]!
          expect(ids(was.things)).toEqual(expect.arrayContaining([...ids(reached.things)]))
          if (was.open) expect(reached.open).toBe(true)
          else if (!reached.open)
            expect([ids(reached.things), ids(reached.lines)]).toEqual([ids(was.things), ids(was.lines)])
        })
      }),
      { numRuns: 2000 },
    )
    for (const change of ['1 1', '1 0', '-1 -1', '-1 0', '0 0'])
      expect(seen.get(change) ?? 0, change).toBeGreaterThan(500)
  }, 240_000)

  it('leaves nothing missing in an answer that is told, and something in one that is not', () => {
    fc.assert(
      fc.property(anyHouse('some'), (house) => {
        const network = networkOf(house)
        for (const isTarget of [isKind('relief'), isIronDrain, isKind('service')]) {
          const answer = reachesWithout(network, { component: 'B1' }, isTarget, { closing: true })
          expect(answer.missing.length > 0).toBe(answer.truth === 0)
        }
      }),
      { numRuns: 500 },
    )
  })
})

describe('a house that is drawn in full', () => {
  it('leaves nothing to ask, and is answered as by walking it naively', () => {
    const seen = new Set<number>()
    fc.assert(
      fc.property(anyHouse('every'), (house) => {
        const network = networkOf(house)
        for (const name of ['relief', 'service', 'tee']) {
          const closing = reachesWithout(network, water, isKind(name), { closing: true, checking: true })
          const passing = everyWayPasses(network, water, isKind(name), { passes: isKind('pump') })
          seen.add(closing.truth)
          expect(closing.truth).toBe(oracleReaches(house, name, { closes: true, checks: true }) ? 1 : -1)
          expect(passing.truth).toBe(oracleReaches(house, name, { kind: 'pump' }) ? -1 : 1)
          expect(passing.reached).toBe(oracleReaches(house, name, {}) ? 1 : -1)
        }
        expect(reachedThings(network, { component: 'B1' }).open).toBe(false)
      }),
      { numRuns: 1000 },
    )
    expect([...seen].sort()).toEqual([-1, 1])
  })
})

describe('building on', () => {
  it('a closable thing on every way leaves no free way', () => {
    fc.assert(
      fc.property(anyHouse('some'), (house) => {
        const before = reliefFrom(networkOf(house), { closing: true })
        const after = reliefFrom(networkOf(valvesAtBoiler(house)), { closing: true })
        expect(after.truth).toBeLessThanOrEqual(Math.min(0, before.truth))
      }),
      { numRuns: 1000 },
    )
  })

  it('a way round never makes every way pass', () => {
    const seen = new Set<number>()
    fc.assert(
      fc.property(anyHouse('some'), fc.nat(), fc.nat(), (house, one, other) => {
        const passes = { passes: isKind('pump') }
        const before = everyWayPasses(networkOf(house), water, isKind('relief'), passes)
        const after = everyWayPasses(networkOf(withWayRound(house, one, other)), water, isKind('relief'), passes)
        seen.add(before.truth)
        if (before.truth !== 1) expect(after.truth).toBeLessThanOrEqual(before.truth)
      }),
      { numRuns: 1000 },
    )
    expect([...seen].sort()).toEqual([-1, 0, 1])
  })

  it('a coupling changes nothing', () => {
    fc.assert(
      fc.property(anyHouse('some'), (house) => {
        expect(answersOf(networkOf(withCouplings(house)), house).truths).toEqual(
          answersOf(networkOf(house), house).truths,
        )
      }),
      { numRuns: 500 },
    )
  })

  it('a line told backwards, or things told in another order, change nothing', () => {
    fc.assert(
      fc.property(anyHouse('some'), (house) => {
        const turned = { ...house, parts: house.parts.toReversed(), runs: house.runs.map(backwards).toReversed() }
        const [one, other] = [answersOf(networkOf(house), house), answersOf(networkOf(turned), turned)]
        expect(other.truths).toEqual(one.truths)
        expect(other.reached.map(({ things, lines, open }) => [ids(things), ids(lines), open])).toEqual(
          one.reached.map(({ things, lines, open }) => [ids(things), ids(lines), open]),
        )
      }),
      { numRuns: 500 },
    )
  })
})

/** A stop valve without lock in each line that ends at a water port of the boiler. */
function valvesAtBoiler(house: House): House {
  const isBoiler = (item: string | undefined): boolean => item?.split('.')[0] === 'B1'
  const valves = house.runs.flatMap(({ id, path }) =>
    [...path.keys()].filter((at) => isBoiler(path[at])).map((at) => `V-${id}-${at}`),
  )
  const runs = house.runs.map(({ path, ...rest }) => ({
    ...rest,
    path: path.flatMap((item, at) => {
      if (!isBoiler(item)) return [item]
      const valve = `V-${rest.id}-${at}`
      if (at === 0) return [item, `${valve}.a-b`]
      return at === path.length - 1 ? [`${valve}.a-b`, item] : [`${valve}.a-b`, item, `${valve}x.a-b`]
    }),
  }))
  const ends = valves.flatMap((id) => [part(id, 'zoneValve'), part(`${id}x`, 'zoneValve', { capped: ['a', 'b'] })])
  return { ...house, parts: [...house.parts, ...ends], runs }
}

/** Tees in two lines of heating water, joined by a line of their own. */
function withWayRound(house: House, one: number, other: number): House {
  const lines = house.runs.filter(({ medium }) => medium === 'heatingWater')
  const [from, to] = [lines[one % Math.max(1, lines.length)], lines[other % Math.max(1, lines.length)]]
  if (from === undefined || to === undefined || from === to) return house
  const withTee = (each: House['runs'][number], id: string) => ({
    ...each,
    path: [each.path[0]!, `${id}.a-b`, ...each.path.slice(1)],
  })
  const runs = house.runs.map((each) =>
    each === from ? withTee(each, 'T1') : each === to ? withTee(each, 'T2') : each,
  )
  return {
    ...house,
    parts: [...house.parts, part('T1', 'tee'), part('T2', 'tee')],
    runs: [...runs, run('L-round', 'T1.branch T2.branch', { medium: 'heatingWater' })],
  }
}

/** Each line of heating water cut in its first piece and joined again by a coupling. */
function withCouplings(house: House): House {
  const isCut = ({ medium }: House['runs'][number]): boolean => medium === 'heatingWater'
  const couplings = house.runs.filter(isCut).map(({ id }) => part(`C-${id}`, 'coupling'))
  const runs = house.runs.flatMap((each) => {
    if (!isCut(each)) return [each]
    const [first, ...rest] = each.path
    return [
      { ...each, path: [first!, `C-${each.id}.a`] },
      { ...each, id: `${each.id}-2`, path: [`C-${each.id}.b`, ...rest] },
    ]
  })
  return { ...house, parts: [...house.parts, ...couplings], runs }
}

function backwards({ path, ...rest }: House['runs'][number]): House['runs'][number] {
  const turned = path.toReversed().map((item) => {
    const [component, port] = item.split('.')
    const [enter, leave] = port?.split('-') ?? []
    return leave === undefined ? item : `${component}.${leave}-${enter}`
  })
  return { ...rest, path: turned }
}
