import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkInstallation } from '../../src/check-installation.js'
import type { Report } from '../../src/findings/index.js'
import { askFact, gatherFacts, type Answer } from '../../src/facts/index.js'
import { applyEdits, isMap, readShelf, tryReadInstallation, type Edit, type PlainMap } from '../../src/model/index.js'
import { catalogue, handles, model } from '../checks/asking.js'
import { houses } from '../checks/houses.js'
import { openEquipment, openSeed, openTowns } from '../houses/open-house.js'
import { drawnBackwards, drawnInPieces, linesOf } from './redrawn.js'

const rulebook = openTowns('harrowmere', 'saltmarrow')
const equipment = readShelf(openEquipment(), model)
const seeds = (['larkspur-lane', 'coopers-stair'] as const).map((name) => {
  const seed = openSeed(name)
  return { name, house: isMap(seed) ? seed : {} }
})

/** All facts and checks of everything listed but lines: `RV1.way yes`, numbers to nine digits. */
function answersOf(document: PlainMap): ReadonlyMap<string, string> {
  const read = tryReadInstallation({ ...document, installation: '1' }, model, equipment)
  if (!read.ok) throw new Error(read.problems.map(({ pointer, message }) => `${pointer}: ${message}`).join('\n'))
  const { strict } = gatherFacts(read.installation, catalogue)
  const { ofKind } = strict.installation
  const asked = handles.flatMap(({ of, name }) =>
    (model.kindsIn.get(of) ?? [of]).flatMap((kind) =>
      (kind === 'line' ? [] : (ofKind.get(kind) ?? [])).map((thing) => ({ thing, name })),
    ),
  )
  return new Map(
    asked.map(({ thing, name }) => [`${thing.id}.${name}`, print(askFact(catalogue, strict, thing, name))]),
  )
}

function print(answer: Answer): string {
  if (answer.state === 'word') return answer.word
  return answer.state === 'number' ? [answer.low, answer.high].map((end) => String(end)).join(' to ') : answer.state
}

function changed(house: PlainMap, edits: readonly Edit[]): PlainMap {
  const edited = applyEdits(house, edits, model)
  if (!edited.ok) throw new Error(edited.problems.map(({ message }) => message).join('\n'))
  return edited.document
}

function report(document: PlainMap): Report {
  return checkInstallation({ ...document, installation: 1 }, rulebook, { equipment: openEquipment() })
}

/** The same words, or numbers that differ by rounding alone: a flow is found by steps that come nearer and nearer. */
function alike(one: string, other: string): boolean {
  if (one === other) return true
  const [from, to] = [one.split(' to ').map(Number), other.split(' to ').map(Number)]
  return from.length === 2 && to.length === 2 && from.every((end, index) => isNear(end, to[index] ?? NaN))
}

function isNear(one: number, other: number): boolean {
  return one === other || Math.abs(one - other) <= 1e-7 * Math.max(Math.abs(one), Math.abs(other))
}

const different = (one: ReadonlyMap<string, string>, other: ReadonlyMap<string, string>): readonly string[] =>
  [...new Set([...one.keys(), ...other.keys()])]
    .filter((key) => !alike(one.get(key) ?? '', other.get(key) ?? ''))
    .map((key) => `${key}: ${one.get(key) ?? ''} became ${other.get(key) ?? ''}`)

describe('lines listed from their other end', () => {
  it.each(seeds)('change no answer in $name', ({ house }) => {
    expect(different(answersOf(house), answersOf(drawnBackwards(house, model)))).toEqual([])
  })

  it('change no answer in any house', () => {
    fc.assert(
      fc.property(houses, (house) => {
        expect(different(answersOf(house), answersOf(drawnBackwards(house, model)))).toEqual([])
      }),
      { numRuns: 100 },
    )
  })
})

describe('lines told in two pieces', () => {
  it.each(seeds)('change no answer in $name', ({ house }) => {
    for (const pick of [0, 1, 2])
      expect(different(answersOf(house), answersOf(drawnInPieces(house, model, pick)))).toEqual([])
  })

  it('change no answer in any house', () => {
    fc.assert(
      fc.property(houses, fc.nat(5), (house, pick) => {
        expect(different(answersOf(house), answersOf(drawnInPieces(house, model, pick)))).toEqual([])
      }),
      { numRuns: 100 },
    )
  })
})

const waterTee: Readonly<Record<string, string>> = {
  heatingWater: 'tee',
  potableCold: 'potableTee',
  potableHot: 'potableTee',
  condensate: 'condensateTee',
  gas: 'gasTee',
}

/** What is answered yes, or its like, only where every way passes something. */
const everyWay: readonly (readonly [fact: string, good: string])[] = [
  ['tempered', 'yes'],
  ['condensateTreated', 'yes'],
  ['metalAheadOfNeutralizer', 'no'],
  ['acidReachesMetalDrain', 'no'],
  ['drinkingWaterJoined', 'no'],
  ['trapFirst', 'yes'],
  ['dirtSeparated', 'yes'],
  ['backflowOrder', 'ahead'],
  ['shutoffAhead', 'yes'],
]

/** A line of its own between tees behind the beginning of two lines in one medium. */
function withWayRound(document: PlainMap, one: number, other: number): PlainMap {
  const lines = linesOf(document)
  const from = lines[one % Math.max(1, lines.length)]
  const alike = lines.filter(({ line, id }) => line.medium === from?.line.medium && id !== from?.id)
  const to = alike[other % Math.max(1, alike.length)]
  const medium = String(from?.line.medium)
  const tee = waterTee[medium]
  if (from === undefined || to === undefined || tee === undefined) return document
  const tees = [from, to].map(({ id, path }, at) => ({
    insert: { id: `RT${at}`, kind: tee },
    in: id,
    after: path[0]!,
  }))
  return changed(document, [...tees, { insert: { id: 'L-round', medium, path: ['RT0.branch', 'RT1.branch'] } }])
}

describe('a way round', () => {
  const goodOnes = (document: PlainMap): readonly string[] => {
    const isGood = ([key, answer]: readonly [string, string]): boolean =>
      everyWay.some(([fact, good]) => key.endsWith(`.${fact}`) && answer === good)
    return [...answersOf(document)].filter(isGood).map(([key]) => key)
  }
  const better = (before: PlainMap, after: PlainMap): readonly string[] => {
    const had = new Set(goodOnes(before))
    return goodOnes(after).filter((key) => !had.has(key))
  }

  it('never makes every way pass what it avoids, in any house', () => {
    const seen = new Set<string>()
    fc.assert(
      fc.property(houses, fc.nat(), fc.nat(), (house, one, other) => {
        for (const key of goodOnes(house)) seen.add(key.split('.')[1] ?? '')
        expect(better(house, withWayRound(house, one, other))).toEqual([])
      }),
      { numRuns: 150, seed: 7 },
    )
    expect([...seen].sort()).toEqual(everyWay.map(([fact]) => fact).sort())
  })

  it.each(seeds)('never makes every way pass what it avoids, in $name', ({ house }) => {
    for (const one of linesOf(house).keys()) expect(better(house, withWayRound(house, one, one * 7 + 3))).toEqual([])
  })
})

describe('a line taken out', () => {
  /** What cannot be told before, and can be told with less on the paper. */
  const cleared = (house: PlainMap): readonly string[] => {
    const before = answersOf(house)
    return linesOf(house).flatMap(({ id }) =>
      [...answersOf(changed(house, [{ remove: id }]))]
        .filter(([key, answer]) => answer !== 'unknown' && before.get(key) === 'unknown')
        .map(([key, answer]) => `without ${id} ${key} became ${answer}`),
    )
  }

  it.each(seeds)('makes nothing clear that was open before, in $name', ({ house }) => {
    expect(cleared(house)).toEqual([])
  })

  // A pipe of which nobody knows where it runs is no longer a pipe that might freeze, nor counted, once it is gone.
  const saidOfPipes = ['.canFreeze ']

  it('makes no order of things clear that was open before, in any house', () => {
    fc.assert(
      fc.property(houses, (house) => {
        expect(cleared(house).filter((line) => !saidOfPipes.some((fact) => line.includes(fact)))).toEqual([])
      }),
      { numRuns: 12, endOnFailure: true },
    )
  })

  it.each(seeds)('leaves the outcome of $name as it was, or less clear', ({ house }) => {
    const before = report(house).outcome
    const outcomes = linesOf(house).map(({ id }) => report(changed(house, [{ remove: id }])).outcome)
    expect(outcomes.filter((outcome) => outcome === 'clear' && before !== 'clear')).toEqual([])
    expect(outcomes).toContain(before === 'clear' ? 'open' : before)
  })
})

describe('a valve that can be shut on the way to the relief valve', () => {
  const house = seeds[0]?.house ?? {}
  const valves = (model.kindsIn.get('closable') ?? []).filter((kind) =>
    Object.values(model.kinds.get(kind)?.ports ?? {}).some((port) => port === 'heatingWater' || port === 'eitherWater'),
  )

  /** Only some valves can be locked; of those it has to be said that this one is not. */
  const unlocked = (kind: string): PlainMap => (model.leaves.get(kind)?.has('locked') === true ? { locked: 'no' } : {})

  it.each(valves)('stops the clean house: %s', (kind) => {
    fc.assert(
      fc.property(fc.nat(3), fc.nat(3), (tees, at) => {
        const plain = Array.from({ length: tees }, (_each, index) => ({
          insert: { id: `PL${index}`, kind: 'tee', capped: ['branch'] },
          in: 'L-relief',
          after: 'B1.relief',
        }))
        const after = at < tees ? `PL${at}` : 'B1.relief'
        const valve = { insert: { id: 'BAD', kind, ...unlocked(kind) }, in: 'L-relief', after }
        const told = report(changed(house, [...plain, valve])).findings.map(({ key, severity }) => `${severity} ${key}`)
        expect(told).toContain('stop relief/way/B1')
      }),
      { numRuns: 6 },
    )
  })

  it('leaves no free way in any house', () => {
    const seen = new Set<string>()
    fc.assert(
      fc.property(houses, fc.constantFrom(...valves), (some, kind) => {
        const ends = linesOf(some).filter(({ path }) => path.at(-1) === 'RV1.inlet')
        const edits = ends.map(({ id, path }) => ({ insert: { id: 'BAD', kind }, in: id, after: path.at(-2) ?? '' }))
        const answer = answersOf(changed(some, edits)).get('B1.reliefWay')
        seen.add(answersOf(some).get('B1.reliefWay') ?? '')
        expect(answer).not.toBe('open')
      }),
      { numRuns: 60, seed: 7 },
    )
    expect([...seen]).toEqual(expect.arrayContaining(['open', 'blocked']))
  })
})
