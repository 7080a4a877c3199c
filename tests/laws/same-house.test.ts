import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkInstallation } from '../../src/check-installation.js'
import type { Report } from '../../src/findings/index.js'
import { isMap, textOf, tryReadInstallation } from '../../src/model/index.js'
import { openEquipment, openSeed, openTowns, seedNames } from '../houses/open-house.js'
import { inSi } from './in-si.js'

const rulebook = openTowns('harrowmere', 'saltmarrow')
const equipment = openEquipment()

function check(document: unknown): Report {
  return checkInstallation({ ...(isMap(document) ? document : {}), installation: 1 }, rulebook, {
    equipment,
    judgedOn: '2025-11-01',
  })
}

function verdictsOf(report: Report): readonly string[] {
  return report.findings.map(({ key, verdict, severity, couldBe }) => `${key} ${verdict} ${severity} ${couldBe ?? ''}`)
}

describe.each(seedNames)('%s told otherwise is the same house', (name) => {
  const house = openSeed(name)
  const before = check(house)

  it('gives the same bytes twice', () => {
    expect(JSON.stringify(check(openSeed(name)))).toBe(JSON.stringify(before))
  })

  it('with its lists shuffled', () => {
    fc.assert(
      fc.property(fc.infiniteStream(fc.nat()), (numbers) => {
        const after = check(shuffleSections(house, numbers))
        expect(verdictsOf(after)).toEqual(verdictsOf(before))
        expect(after.outcome).toBe(before.outcome)
      }),
      { numRuns: 25 },
    )
  })

  it('with every id renamed', () => {
    const ids = idsIn(house)
    const renamed = rename(house, new Map(ids.map((id) => [id, `Q${id}`])))
    const read = tryReadInstallation(renamed, rulebook.model)
    expect(read.ok ? [] : read.problems).toEqual([])
    const back = (text: string): string => ids.reduce((all, id) => all.replaceAll(`Q${id}`, id), text)
    expect(verdictsOf(check(renamed)).map(back)).toEqual(verdictsOf(before))
  })

  it('written in SI', () => {
    const metric = check(inSi(house, rulebook.model))
    expect(verdictsOf(metric)).toEqual(verdictsOf(before))
    expect(metric.outcome).toBe(before.outcome)
  })
})

const listOf = (value: readonly unknown[]): readonly unknown[] => value

function shuffleSections(house: unknown, numbers: fc.Stream<number>): unknown {
  const shuffle = (list: readonly unknown[]): readonly unknown[] =>
    list
      .map((item) => ({ item, at: numbers.next().value ?? 0 }))
      .sort((a, b) => a.at - b.at)
      .map(({ item }) => item)
  return Object.fromEntries(
    Object.entries(isMap(house) ? house : {}).map(([section, value]) => [
      section,
      Array.isArray(value) ? shuffle(listOf(value)) : listOf([value])[0],
    ]),
  )
}

function idsIn(house: unknown): readonly string[] {
  const lists = Object.entries(isMap(house) ? house : {}).flatMap(([section, value]) =>
    Array.isArray(value) && section !== 'none' && section !== 'states' ? listOf(value) : [],
  )
  return lists.flatMap((item: unknown) => (isMap(item) ? [item.id].flat() : [])).flatMap((id) => textOf(id) ?? [])
}

/** Keys under which words stand that may look like an id. */
const spoken: readonly string[] = [
  'use',
  'type',
  'kind',
  'because',
  'caption',
  'name',
  'level',
  'material',
  'class',
  'side',
]

/** Renames ids wherever they stand alone, before a port, or in a list. */
function rename(value: unknown, names: ReadonlyMap<string, string>): unknown {
  if (Array.isArray(value)) return value.map((item) => rename(item, names))
  if (isMap(value))
    return Object.fromEntries(
      Object.entries(value).map(([key, inner]) => [key, spoken.includes(key) ? inner : rename(inner, names)]),
    )
  if (typeof value !== 'string') return value
  const [first = '', ...rest] = value.split('.')
  const renamed = names.get(first)
  return renamed === undefined ? value : [renamed, ...rest].join('.')
}
