import { describe, expect, expectTypeOf, it } from 'vitest'
import * as exported from '../../src/model/kinds/index.js'
import {
  builtInKinds,
  corrodible,
  pipeType,
  type BackflowPreventerWritten,
  type BoilerWritten,
  type ComponentWritten,
  type HeatingFluidWritten,
  type IndirectTankWritten,
  type InstallationWritten,
  type IsolationValveWritten,
  type VentRunWritten,
} from '../../src/model/kinds/index.js'
import {
  defineModel,
  fieldsOfEvery,
  leavesOf,
  type EntryWritten,
  type KindSpec,
  type LeafField,
  type LongEntry,
} from '../../src/model/index.js'
import { quantityNames } from '../../src/units/index.js'

const parts = builtInKinds.flatMap((kind) => Object.values(kind.parts))
const all = [...builtInKinds, ...parts].map((kind) => [kind.name, kind] as const)
const families = new Map(all.flatMap(([, kind]) => kind.families.map((family) => [family.name, family] as const)))
const kindNames = all.map(([name]) => name)

describe.each(all)('kind %s', (_name, kind) => {
  it('holds the fields of its families', () => {
    for (const family of kind.families) expect(kind.fields).toMatchObject(family.fields)
  })

  it('joins only ports that it has', () => {
    const named = [...(kind.through ?? []), ...kind.ways.flatMap((way) => way.between)]
    expect(Object.keys(kind.ports)).toEqual(expect.arrayContaining(named))
    for (const way of kind.ways) expect(way.between[0]).not.toBe(way.between[1])
  })

  it('passes a line through by a way that it has, in one medium', () => {
    const [enter, leave] = kind.through ?? []
    if (enter === undefined || leave === undefined) return expect(kind.through).toBeUndefined()
    expect(kind.ways.map((way) => way.between)).toContainEqual([enter, leave])
    expect(water(kind.ports[leave])).toBe(water(kind.ports[enter]))
  })

  it('closes by choices that its fields have', () => {
    for (const { closes } of kind.ways) {
      if (typeof closes === 'string') continue
      const field = kind.fields[closes.unless]
      expect(field?.type === 'choice' && Object.keys(field.choices)).toContain(closes.is)
    }
  })

  it('counts numbered ports by a count field', () => {
    const numbered = Object.keys(kind.ports).filter((port) => port.endsWith('*'))
    expect(numbered.length > 0).toBe(kind.portsCountedBy !== undefined)
    const counter = kind.portsCountedBy === undefined ? undefined : kind.fields[kind.portsCountedBy]
    expect(counter).toEqual(numbered.length > 0 ? { type: 'quantity', quantity: 'count' } : undefined)
  })

  it('draws power exactly when it is a powered device', () => {
    expect(kind.draws !== undefined).toBe(kind.families.some((family) => family.name === 'poweredDevice'))
  })

  it('refers to kinds and families that exist', () => {
    for (const leaf of leaves(kind)) {
      const to = leaf.type === 'reference' ? leaf.to : []
      for (const name of to) expect([...kindNames, ...families.keys()]).toContain(name)
    }
  })

  it('uses quantities that exist', () => {
    for (const leaf of leaves(kind)) if (leaf.type === 'quantity') expect(quantityNames).toContain(leaf.quantity)
  })

  it('has choices that can be written and are spoken', () => {
    for (const leaf of leaves(kind)) {
      if (leaf.type !== 'choice') continue
      for (const [word, spoken] of Object.entries(leaf.choices)) {
        expect(word).toMatch(/^[a-z][A-Za-z0-9]*(-[A-Za-z0-9]+)*$/)
        expect(['unknown', 'none', 'not-applicable']).not.toContain(word)
        expect(spoken.trim()).not.toBe('')
      }
    }
  })

  it('gives each of its fields, ports and parts, and each count kept at it, a name of its own', () => {
    const own = [...Object.keys(kind.fields), ...Object.keys(kind.ports), ...Object.keys(kind.parts)]
    const shared = Object.keys(fieldsOfEvery(kind.section)).filter((name) => !Object.hasOwn(kind.fields, name))
    const counts = [
      ...new Set(
        defineModel(builtInKinds)
          .inverse.get(kind.name)
          ?.map(({ countedAs }) => countedAs),
      ),
    ]
    const names = [...own, ...shared, ...counts, ...reservedKeys]
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([])
  })

  it('is named in full words', () => {
    const names = [kind.name, ...Object.keys(kind.fields), ...Object.keys(kind.parts), ...Object.keys(kind.ports)]
    for (const name of names) expect(name).toMatch(/^[a-z]+([A-Z][a-z]*)*(90|45|\*)?$/)
    for (const name of names) for (const word of wordsOf(name)) expect(shortenings).not.toContain(word)
  })

  it('can be spoken of', () => {
    expect(kind.spoken).toMatch(/^[a-z][a-z -]+$/)
  })
})

describe('the built-in kinds together', () => {
  const model = defineModel(builtInKinds)

  it('are indexed under their own name, parts included', () => {
    expect([...model.kinds.keys()].sort()).toEqual([...new Set(kindNames)].sort())
    expect([...model.kinds.values()].filter((kind) => model.leaves.get(kind.name) === undefined)).toEqual([])
  })

  it('have names that no family shares', () => {
    expect(new Set(kindNames).size).toBe(kindNames.length)
    expect(kindNames.filter((name) => families.has(name))).toEqual([])
    expect(new Set(builtInKinds.map((kind) => kind.spoken)).size).toBe(builtInKinds.length)
  })

  it('have one kind for each section that writes none', () => {
    const single = ['lines', 'zones', 'spaces', 'fixtures', 'states', 'readings', 'tests', 'evidence'] as const
    for (const section of single) expect(builtInKinds.filter((kind) => kind.section === section)).toHaveLength(1)
  })

  it('are all exported under their name, and no other kind is', () => {
    const kinds = Object.entries(exported).filter(([, value]) => 'section' in value)
    expect(kinds.map(([name]) => name).sort()).toEqual([...kindNames].sort())
    expect(Object.keys(exported)).toEqual(expect.arrayContaining([...families.keys()]))
  })

  it('name each part by one owner', () => {
    expect(Object.fromEntries(model.ownerOf)).toEqual({
      ventTableRow: { kind: 'boiler', parts: 'ventTable' },
      efficiencyPoint: { kind: 'boiler', parts: 'efficiencyCurve' },
      altitudeRow: { kind: 'boiler', parts: 'altitudeTable' },
      pumpPoint: { kind: 'circulator', parts: 'curve' },
      resetPoint: { kind: 'heatingControl', parts: 'curve' },
      chimneyInlet: { kind: 'chimneyFlue', parts: 'inlets' },
      ventFitting: { kind: 'ventRun', parts: 'fittings' },
      opening: { kind: 'ventTermination', parts: 'openings' },
    })
  })

  it('gather kinds in families', () => {
    const inFamily = (name: string) => [...(model.kindsIn.get(name) ?? [])].sort()
    expect(inFamily('emitter')).toEqual([
      'castIronBaseboard',
      'castIronRadiator',
      'convector',
      'fanCoil',
      'finTube',
      'panelRadiator',
      'radiantFloor',
      'towelRadiator',
      'unitHeater',
    ])
    expect(inFamily('poweredDevice')).toEqual([
      'actuator',
      'controlPanel',
      'divertingValve',
      'heatingControl',
      'networkGateway',
      'relay',
      'thermostat',
      'zoneValve',
    ])
    expect(inFamily('fuelBurner')).toEqual(['boiler', 'otherGasAppliance', 'waterHeater'])
    expect(inFamily('gasAppliance')).toEqual(['boiler', 'otherGasAppliance', 'waterHeater'])
    expect(inFamily('backflowDevice')).toEqual(['backflowPreventer', 'combinedFillDevice'])
    expect(inFamily('fillDevice')).toEqual(['combinedFillDevice', 'fillValve', 'glycolFeeder'])
    expect(inFamily('hotWaterSource')).toEqual(['builtInWaterHeater', 'indirectTank', 'waterHeater'])
    expect(inFamily('waterVessel')).toEqual(['boiler', 'bufferTank', 'indirectTank', 'waterHeater'])
    expect(inFamily('pressurePart')).not.toContain('boiler')
  })

  it('take everything that water under pressure fills as a part under pressure, but the boiler with its own limit', () => {
    const isWet = (medium: string): boolean => medium === 'heatingWater' || medium === 'eitherWater'
    const wet = builtInKinds.filter((kind) => Object.values(kind.ports).some(isWet))
    const without = wet.filter((kind) => !kind.families.some((family) => family.name === 'pressurePart'))
    expect(without.map((kind) => kind.name).sort()).toEqual([
      'backflowPreventer',
      'boiler',
      'combinedFillDevice',
      'fillValve',
      'glycolFeeder',
      'potableStop',
      'reliefValve',
    ])
  })

  it('count references at what they refer to', () => {
    const countsAt = (name: string) => [...new Set(model.inverse.get(name)?.map(({ countedAs }) => countedAs))].sort()
    expect(countsAt('boiler')).toEqual([
      'builtInWaterHeaters',
      'controls',
      'emergencyStops',
      'flowSwitches',
      'gasConnectors',
      'gasShutoffs',
      'limits',
      'lowWaterCutoffs',
      'neutralizers',
      'readings',
      'relays',
      'reliefs',
      'serviceSwitches',
      'testsIncluding',
      'testsIsolating',
      'thermometers',
      'ventRuns',
    ])
    expect(countsAt('chimneyFlue')).toEqual(['appliances', 'boilers'])
    expect(countsAt('space')).toEqual(['closets', 'coAlarms', 'combustionAirOpenings', 'zones'])
    expect(countsAt('thermostat')).toEqual(['transformers', 'zones'])
    expect(countsAt('fixture')).toEqual(['outlets'])
  })

  it('count one reference once', () => {
    for (const [at, counted] of model.inverse) {
      const ways = counted.map(({ kind, field, countedAs }) => `${at}.${countedAs} by ${kind}.${field}`)
      expect(ways.filter((way, index) => ways.indexOf(way) !== index)).toEqual([])
    }
  })

  it('let acid attack metals and concrete, never plastic', () => {
    expect(Object.keys(pipeType.choices)).toEqual(expect.arrayContaining([...corrodible]))
    for (const safe of ['pvc', 'cpvc', 'abs', 'polypropylene', 'pex', 'stainless', 'clay'] as const) {
      expect<readonly string[]>(corrodible).not.toContain(safe)
    }
  })
})

describe('what people write', () => {
  it('is plain text with narrow choices', () => {
    expectTypeOf<BoilerWritten['kind']>().toEqualTypeOf<'boiler'>()
    expectTypeOf<NonNullable<BoilerWritten['mawp']>>().toEqualTypeOf<EntryWritten<string>>()
    expectTypeOf<NonNullable<BoilerWritten['condensing']>>().toEqualTypeOf<EntryWritten<'yes' | 'no'>>()
    expectTypeOf<NonNullable<IsolationValveWritten['locked']>>().toEqualTypeOf<EntryWritten<'open' | 'no'>>()
    expectTypeOf<NonNullable<VentRunWritten['side']>>().toEqualTypeOf<
      EntryWritten<'exhaust' | 'intake' | 'concentric'>
    >()
    expectTypeOf<'vented'>().toExtend<NonNullable<BackflowPreventerWritten['class']>>()
    expectTypeOf<'single-check'>().not.toExtend<NonNullable<BackflowPreventerWritten['class']>>()
    expectTypeOf<'none'>().not.toExtend<NonNullable<HeatingFluidWritten['antifreeze']>>()
  })

  it('states answers: words bare or long, amounts long', () => {
    expectTypeOf<NonNullable<BoilerWritten['reliefWay']>>().toEqualTypeOf<EntryWritten<'open' | 'blocked' | 'absent'>>()
    expectTypeOf<NonNullable<IndirectTankWritten['coldSideClosed']>>().toEqualTypeOf<EntryWritten<'yes' | 'no'>>()
    expectTypeOf<NonNullable<BoilerWritten['weakestPart']>>().toEqualTypeOf<LongEntry<string>>()
  })

  it('tells components apart by their kind', () => {
    expectTypeOf<Extract<ComponentWritten, { kind: 'boiler' }>>().toEqualTypeOf<BoilerWritten>()
    expectTypeOf<'zone' | 'site' | 'opening'>().not.toExtend<ComponentWritten['kind']>()
  })

  it('has a branch for each component', () => {
    expectTypeOf<ComponentWritten['kind'] | NotComponents>().toEqualTypeOf<ExportedNames>()
  })

  it('makes a document', () => {
    const document = {
      installation: 1,
      site: { altitude: '310 ft' },
      jurisdiction: { authorities: ['harrowmere'], codes: { irc: '2018' } },
      components: [
        { id: 'B1', kind: 'boiler', mawp: '50 psi', ventTable: [{ id: 'row-2', size: '2', maximumLength: '60 ft' }] },
        { id: ['ZV2', 'ZV3'], kind: 'zoneValve', power: { value: '7.68 VA', how: 'nameplate' } },
      ],
      lines: [{ id: 'L1', medium: 'heatingWater', path: ['B1.relief', 'unknown'], pipe: { type: 'copper-M' } }],
      states: [{ name: 'heating', open: ['ZV2'], energized: ['ZV2', 'unknown'] }],
      'x-office': { job: 7 },
    } as const
    expectTypeOf(document).toExtend<InstallationWritten>()
    expectTypeOf<{
      readonly installation: 1
      readonly components: readonly [{ readonly id: 'B1'; readonly kind: 'furnace' }]
    }>().not.toExtend<InstallationWritten>()
    expect(document.components.map(({ kind }) => kind)).toEqual(['boiler', 'zoneValve'])
  })
})

type Exported = typeof exported
type ExportedNames = {
  [K in keyof Exported]: Exported[K] extends { readonly name: infer N; readonly section: unknown } ? N : never
}[keyof Exported]
type Items = 'line' | 'zone' | 'space' | 'fixture' | 'state' | 'reading' | 'test' | 'evidence'
type Singletons = 'site' | 'building' | 'water' | 'fuel' | 'heatingFluid' | 'jurisdiction'
type Parts =
  | 'ventTableRow'
  | 'ventFitting'
  | 'opening'
  | 'efficiencyPoint'
  | 'altitudeRow'
  | 'pumpPoint'
  | 'resetPoint'
  | 'chimneyInlet'
type NotComponents = Items | Singletons | 'installation' | Parts

const reservedKeys = ['id', 'kind', 'name', 'standing', 'evidence', 'medium', 'path']
const shortenings = ['temp', 'press', 'vol', 'qty', 'max', 'min', 'dia', 'len', 'ref', 'num', 'elev', 'cap', 'spec']

function leaves(kind: KindSpec): readonly LeafField[] {
  return [...leavesOf(kind.fields).values()].map((leaf) => (leaf.type === 'list' ? leaf.of : leaf))
}

function water(medium: string | undefined): string | undefined {
  return medium?.replace(/^potable(Cold|Hot)$/, 'potable')
}

function wordsOf(name: string): readonly string[] {
  return name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`).split(' ')
}
