import { describe, expect, it } from 'vitest'
import {
  builtInKinds,
  choice,
  defineModel,
  quantity,
  readEquipment,
  readInstallation,
  tryReadInstallation,
  UnreadableInstallation,
} from '../../../src/model/index.js'

const model = defineModel(builtInKinds, [
  { of: 'boiler', name: 'reliefWay', field: choice({ open: 'open', blocked: 'blocked', absent: 'absent' }) },
  { of: 'boiler', name: 'weakestPart', field: quantity('pressure') },
])

function problemsOf(more: Readonly<Record<string, unknown>>): readonly string[] {
  const read = tryReadInstallation({ installation: '1', ...more }, model)
  return read.ok
    ? []
    : read.problems.map(
        ({ code, pointer, nearest }) => `${code} ${pointer}${nearest === undefined ? '' : ` -> ${nearest}`}`,
      )
}

const boiler = (fields: Readonly<Record<string, unknown>>) => ({
  components: [{ id: 'B1', kind: 'boiler', ...fields }],
})
const valves = [
  { id: 'B1', kind: 'boiler' },
  { id: 'ISO1', kind: 'isolationValve' },
  { id: 'RV1', kind: 'reliefValve' },
  { id: 'HS', kind: 'header' },
]
const line = (path: readonly string[], medium = 'heatingWater') => ({
  components: valves,
  lines: [{ id: 'L1', medium, path }],
})

/** One mistake a row: what was written, and the problem with its place and the nearest right name. */
const mistakes: readonly (readonly [string, Readonly<Record<string, unknown>>, string])[] = [
  ['a section that is not one', { componnents: [] }, 'unknown-key /componnents -> components'],
  ['a wrong version', { installation: '2' }, 'wrong-version /installation'],
  ['a phase that is not one', { phase: 'finale' }, 'not-a-choice /phase -> final'],
  ['units that are not', { units: 'metric' }, 'not-a-choice /units'],
  ['a list that is a map', { components: { id: 'B1' } }, 'not-a-list /components'],
  ['a component without kind', { components: [{ id: 'B1' }] }, 'unknown-kind /components/0/kind'],
  [
    'a kind that is not one',
    { components: [{ id: 'B1', kind: 'boilr' }] },
    'unknown-kind /components/0/kind -> boiler',
  ],
  ['an id with a space', { components: [{ id: 'B 1', kind: 'boiler' }] }, 'bad-id /components/0/id'],
  ['an id that is a reserved word', { components: [{ id: 'unknown', kind: 'boiler' }] }, 'bad-id /components/0/id'],
  ['an id that is a section', { components: [{ id: 'site', kind: 'boiler' }] }, 'bad-id /components/0/id'],
  [
    'two of one id',
    {
      components: [
        { id: 'B1', kind: 'boiler' },
        { id: 'B1', kind: 'boiler' },
      ],
    },
    'duplicate-id /components/1',
  ],
  [
    'one id in two sections',
    { components: [{ id: 'hall', kind: 'boiler' }], spaces: [{ id: 'hall' }] },
    'duplicate-id /spaces/0',
  ],
  ['a field that is not one', boiler({ mwap: '30 psi' }), 'unknown-key /components/0/mwap -> mawp'],
  ['a quantity without unit', boiler({ mawp: '30' }), 'unreadable-quantity /components/0/mawp -> 30 psi'],
  ['a quantity in a wrong unit', boiler({ mawp: '30 ft' }), 'unreadable-quantity /components/0/mawp'],
  ['a choice that is not one', boiler({ condensing: 'maybe' }), 'not-a-choice /components/0/condensing'],
  ['none as a value', boiler({ mawp: 'none' }), 'reserved-word /components/0/mawp -> unknown'],
  ['not-applicable as a value', boiler({ mawp: 'not-applicable' }), 'reserved-word /components/0/mawp -> unknown'],
  ['nothing as a value', boiler({ mawp: null }), 'empty-value /components/0/mawp -> unknown'],
  [
    'a long form with a wrong key',
    boiler({ mawp: { value: '30 psi', hwo: 'gauge' } }),
    'unknown-key /components/0/mawp/hwo -> how',
  ],
  ['a long form without value', boiler({ mawp: { how: 'gauge' } }), 'no-value /components/0/mawp -> value'],
  [
    'a way of knowing that is not one',
    boiler({ mawp: { value: '30 psi', how: 'photo' } }),
    'not-a-choice /components/0/mawp/how',
  ],
  [
    'a standing that is not one',
    boiler({ mawp: { value: '30 psi', standing: 'guessed' } }),
    'not-a-choice /components/0/mawp/standing',
  ],
  ['a list value that is no list', boiler({ acceptedExhaust: 'cpvc' }), 'not-a-list /components/0/acceptedExhaust'],
  [
    'a word in a list that is no choice',
    boiler({ acceptedExhaust: ['cpvcc'] }),
    'not-a-choice /components/0/acceptedExhaust/0 -> cpvc',
  ],
  [
    'an amount in place of a calculation without its reach',
    boiler({ weakestPart: '30 psi' }),
    'no-within /components/0/weakestPart -> within: 5 gal',
  ],
  ['an answer that is not one', boiler({ reliefWay: 'opn' }), 'not-a-choice /components/0/reliefWay -> open'],
  [
    'a member of a group that is not one',
    { components: [{ id: 'RV1', kind: 'reliefValve', discharge: { hieght: '5 in' } }] },
    'unknown-key /components/0/discharge/hieght',
  ],
  ['a part without id', boiler({ ventTable: [{ size: '2' }] }), 'bad-id /components/0/ventTable/0/id'],
  [
    'a wrong key beside the parts',
    boiler({ ventTable: { compelte: '1', list: [] } }),
    'unknown-key /components/0/ventTable/compelte -> complete',
  ],
  [
    'a reference to nothing',
    {
      components: [
        { id: 'B1', kind: 'boiler' },
        { id: 'RV1', kind: 'reliefValve', protects: 'B2' },
      ],
    },
    'unknown-id /components/1/protects -> B1',
  ],
  [
    'a reference to a wrong kind',
    {
      components: [
        { id: 'C1', kind: 'circulator' },
        { id: 'RV1', kind: 'reliefValve', protects: 'C1' },
      ],
    },
    'wrong-kind /components/1/protects',
  ],
  ['a capped port that is not one', boiler({ capped: ['releif'] }), 'unknown-port /components/0/capped -> relief'],
  ['a line of one end', line(['B1.supply']), 'short-path /lines/0/path'],
  ['a line without port at its end', line(['B1', 'ISO1.a']), 'port-missing /lines/0/path/0 -> B1.supply'],
  ['a port that is not one', line(['B1.suply', 'ISO1.a']), 'unknown-port /lines/0/path/0 -> supply'],
  ['a port inside a path', line(['B1.supply', 'ISO1.a', 'HS.main']), 'port-inside-path /lines/0/path/1 -> ISO1'],
  ['a way through that has none', line(['B1.supply', 'HS', 'ISO1.a']), 'no-through-way /lines/0/path/1'],
  [
    'a component in a path that is not there',
    line(['B1.supply', 'ISO2', 'HS.main']),
    'unknown-id /lines/0/path/1 -> ISO1',
  ],
  [
    'a medium that is not one',
    line(['B1.supply', 'ISO1.a'], 'heatingwatr'),
    'not-a-choice /lines/0/medium -> heatingWater',
  ],
  ['media that must not meet', line(['B1.supply', 'ISO1.a'], 'gas'), 'wrong-medium /lines/0/path/0 -> B1.gas'],
  ['a component that has nothing of the medium', line(['B1.gas', 'ISO1.a'], 'gas'), 'wrong-medium /lines/0/path/1'],
  ['a way through in another medium', line(['B1.gas', 'ISO1', 'unknown'], 'gas'), 'wrong-medium /lines/0/path/1'],
  [
    'drinking water led into heating water without a device',
    line(['B1.supply', 'ISO1', 'HS.main'], 'potableCold'),
    'wrong-medium /lines/0/path/2',
  ],
  [
    'a port used twice',
    {
      components: valves,
      lines: [
        { id: 'L1', medium: 'heatingWater', path: ['B1.supply', 'ISO1.a'] },
        { id: 'L2', medium: 'heatingWater', path: ['B1.supply', 'HS.main'] },
      ],
    },
    'port-taken /lines/1/path/0',
  ],
  ['a count of nothing known', { complete: { boilers: '1' } }, 'unknown-kind /complete/boilers -> boiler'],
  ['a count that is no number', { complete: { boiler: 'two' } }, 'unreadable-quantity /complete/boiler'],
  ['none of nothing known', { none: ['relifValve'] }, 'unknown-kind /none/0 -> reliefValve'],
  ['counted and none at once', { complete: { boiler: '1' }, none: ['boiler'] }, 'counted-twice /none/0'],
  ['a kept thing that is not there', { kept: { list: ['E1'] } }, 'unknown-id /kept/list/0'],
  ['an approval that says too little', { approved: [{ rule: 'x', subject: 'B1' }] }, 'incomplete-approval /approved/0'],
  ['a state without name', { states: [{ open: [] }] }, 'no-name /states/0 -> name'],
]

describe('reading', () => {
  it.each(mistakes)('tells %s', (_name, written, expected) => {
    expect(problemsOf(written)).toContain(expected)
  })

  it('tells every mistake in one run, and throws once with all of them', () => {
    const document = {
      installation: '1',
      phase: 'finale',
      components: [
        { id: 'B1', kind: 'boiler', mawp: '30', mwap: 'x' },
        { id: 'B 2', kind: 'boilr' },
      ],
    }
    expect(problemsOf(document)).toHaveLength(4)
    expect(() => readInstallation(document, model)).toThrow(UnreadableInstallation)
    expect(() => readInstallation(document, model)).toThrow(/4 problems in the document/)
  })

  it('tells the mistakes of a thing whose id is wrong too', () => {
    expect(problemsOf({ components: [{ id: 'B 1', kind: 'boiler', mawp: '30' }] })).toEqual([
      'bad-id /components/0/id',
      'unreadable-quantity /components/0/mawp -> 30 psi',
    ])
  })

  it('keeps what begins with x-', () => {
    expect(problemsOf({ 'x-job': '12', ...boiler({ 'x-note': 'words' }) })).toEqual([])
  })

  it('takes numbers and yes and no of JSON as they would be typed', () => {
    const read = tryReadInstallation(
      {
        installation: 1,
        components: [
          { id: 'HS', kind: 'header', branches: 5 },
          { id: 'B1', kind: 'boiler', condensing: true },
        ],
      },
      model,
    )
    expect(read.ok && read.installation.things.get('B1')?.entries.condensing?.text).toBe('yes')
  })

  it('names several alike at once', () => {
    const read = tryReadInstallation(
      { installation: 1, components: [{ id: ['ZV1', 'ZV2'], kind: 'zoneValve', power: '7 VA' }] },
      model,
    )
    expect(read.ok && read.installation.ofKind.get('zoneValve')?.map((thing) => thing.id)).toEqual(['ZV1', 'ZV2'])
  })
})

describe('kept and new work', () => {
  const works = (more: Readonly<Record<string, unknown>>, own: Readonly<Record<string, unknown>> = {}) => {
    const read = tryReadInstallation(
      {
        installation: 1,
        components: [
          { id: 'E1', kind: 'finTube', ...own },
          { id: 'E2', kind: 'finTube' },
        ],
        ...more,
      },
      model,
    )
    if (!read.ok) throw new Error(read.problems[0]?.message)
    return {
      works: ['E1', 'E2'].map((id) => read.installation.things.get(id)?.entries.work?.text),
      contradictions: read.installation.contradictions.map((one) => one.code),
    }
  }

  it('follow the list, and others only where they are said', () => {
    expect(works({}).works).toEqual([undefined, undefined])
    expect(works({ kept: { list: ['E1'] } }).works).toEqual(['kept', undefined])
    expect(works({ kept: { list: ['E1'], others: 'new' } }).works).toEqual(['kept', 'new'])
    expect(works({ kept: { list: ['E1'], others: 'unknown' } }).works).toEqual(['kept', undefined])
    expect(works({ kept: { list: ['unknown'], others: 'new' } }).works).toEqual([undefined, undefined])
    expect(works({ kept: { others: 'new' } }).works).toEqual([undefined, undefined])
  })

  it('follow what a thing says itself', () => {
    expect(works({ kept: { list: [], others: 'new' } }, { work: 'kept' }).works).toEqual(['kept', 'new'])
    expect(works({ kept: { list: [], others: 'new' } }, { work: 'unknown' }).works).toEqual([undefined, 'new'])
    expect(works({ kept: { list: ['E1'] } }, { work: 'new' }).contradictions).toEqual(['work-against-kept'])
    expect(works({ kept: { list: ['E1'] } }, { work: { value: 'new', standing: 'assumed' } })).toEqual({
      works: ['kept', undefined],
      contradictions: [],
    })
  })
})

describe('equipment', () => {
  const raw = {
    equipment: 'equipment/b1',
    kind: 'boiler',
    manual: { title: 'Installation manual', edition: '2024', page: '7' },
    mawp: '50 psi',
    output: '70000 Btu/h',
    ventTable: { complete: '1', list: [{ id: 'two-inch', size: '2', maximumLength: '70 ft' }] },
  }
  const shelf = readEquipment(raw, model)
  const equipment = shelf.ok ? [shelf.equipment] : []
  const readWith = (fields: Readonly<Record<string, unknown>>, shelved = equipment) => {
    const read = tryReadInstallation({ installation: 1, ...boiler(fields) }, model, shelved)
    if (!read.ok) throw new Error(read.problems[0]?.message)
    return read.installation
  }

  it('fills what the document leaves open, with the page it comes from', () => {
    const installation = readWith({ use: 'equipment/b1' })
    expect(installation.things.get('B1')?.entries.mawp).toMatchObject({
      text: '50 psi',
      how: 'manual',
      equipment: 'equipment/b1 (Installation manual, 2024, page 7)',
    })
    expect(installation.things.get('B1/two-inch')?.entries.maximumLength?.text).toBe('70 ft')
  })

  it('gives way to what is stated, and a disagreement is a contradiction', () => {
    const installation = readWith({ use: 'equipment/b1', mawp: '30 psi' })
    expect(installation.things.get('B1')?.entries.mawp?.text).toBe('30 psi')
    expect(installation.contradictions).toMatchObject([
      { code: 'equipment-against-entry', subject: 'B1', fact: 'mawp' },
    ])
    expect(readWith({ use: 'equipment/b1', mawp: '344.7378646584 kPa' }).contradictions).toEqual([])
  })

  it('goes before what is assumed, which contradicts nothing', () => {
    const installation = readWith({ use: 'equipment/b1', mawp: { value: '30 psi', standing: 'assumed' } })
    expect(installation.things.get('B1')?.entries.mawp?.text).toBe('50 psi')
    expect(installation.contradictions).toEqual([])
  })

  it('is only assumed where the model is', () => {
    expect(
      readWith({ use: { value: 'equipment/b1', standing: 'assumed' } }).things.get('B1')?.entries.mawp?.standing,
    ).toBe('assumed')
  })

  it('that is missing leaves unknowns', () => {
    expect(readWith({ use: 'equipment/other' }).things.get('B1')?.entries.mawp).toBeUndefined()
  })

  it('tells every mistake of its file', () => {
    const read = readEquipment({ equipment: 'x', kind: 'boilr', mawp: '30' }, model)
    expect(read.ok ? [] : read.problems.map((problem) => problem.code)).toEqual(['no-manual', 'unknown-kind'])
    const other = readEquipment(
      { equipment: 'x', kind: 'boiler', manual: { title: 'Manual' }, mawp: '30', mwap: '30 psi' },
      model,
    )
    expect(other.ok ? [] : other.problems.map((problem) => problem.code).sort()).toEqual([
      'unknown-key',
      'unreadable-quantity',
    ])
  })
})
