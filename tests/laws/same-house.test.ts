import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkInstallation } from '../../src/check-installation.js'
import type { Report } from '../../src/findings/index.js'
import { isMap, leavesOf, textOf, tryReadInstallation, type LeafField, type Model } from '../../src/model/index.js'
import { parseQuantity, writeQuantity } from '../../src/units/index.js'
import { openEquipment, openSeed, openTowns, seedNames } from '../houses/open-house.js'

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

function inSi(house: unknown, model: Model): unknown {
  if (!isMap(house)) return house
  return Object.fromEntries(
    Object.entries(house).map(([section, value]) => {
      const kind = model.kinds.get(section)
      if (kind?.section === 'singleton') return [section, fieldsInSi(value, leavesOf(kind.fields))]
      return [section, Array.isArray(value) ? value.map((item: unknown) => thingInSi(item, section, model)) : value]
    }),
  )
}

const alone: Readonly<Record<string, string>> = {
  lines: 'line',
  zones: 'zone',
  spaces: 'space',
  fixtures: 'fixture',
  readings: 'reading',
  tests: 'test',
  states: 'state',
  evidence: 'evidence',
}

function thingInSi(item: unknown, section: string, model: Model): unknown {
  if (!isMap(item)) return item
  const name = textOf(item.kind) ?? alone[section] ?? ''
  const kind = model.kinds.get(name)
  if (kind === undefined) return item
  const fields = new Map([...(model.leaves.get(name) ?? []), ...(model.answers.get(name) ?? [])])
  const own = fieldsInSi(item, fields)
  if (!isMap(own)) return own
  const parts = Object.entries(kind.parts).flatMap(([list, part]) =>
    own[list] === undefined ? [] : [[list, partsInSi(own[list], leavesOf(part.fields))]],
  )
  return { ...own, ...Object.fromEntries(parts) }
}

function partsInSi(raw: unknown, fields: ReadonlyMap<string, LeafField>): unknown {
  if (Array.isArray(raw)) return raw.map((item) => fieldsInSi(item, fields))
  return isMap(raw) && Array.isArray(raw.list)
    ? { ...raw, list: raw.list.map((item: unknown) => fieldsInSi(item, fields)) }
    : raw
}

function fieldsInSi(raw: unknown, fields: ReadonlyMap<string, LeafField>, prefix = ''): unknown {
  if (!isMap(raw)) return raw
  return Object.fromEntries(
    Object.entries(raw).map(([name, value]) => {
      const field = fields.get(`${prefix}${name}`)
      if (field?.type === 'quantity') return [name, amountInSi(value, field)]
      const grouped = [...fields.keys()].some((key) => key.startsWith(`${prefix}${name}.`))
      return [name, grouped ? fieldsInSi(value, fields, `${prefix}${name}.`) : value]
    }),
  )
}

function amountInSi(value: unknown, field: LeafField & { readonly type: 'quantity' }): unknown {
  if (isMap(value))
    return {
      ...value,
      value: amountInSi(value.value, field),
      ...(value.within === undefined ? {} : { within: amountInSi(value.within, field) }),
    }
  const text = textOf(value)
  const parsed = text === undefined || text === 'unknown' ? undefined : parseQuantity(text, field.quantity)
  if (parsed?.ok !== true || parsed.low !== parsed.high) return value
  return writeQuantity(parsed.low, field.quantity, 'si')
}
