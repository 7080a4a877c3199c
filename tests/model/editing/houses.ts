import fc from 'fast-check'
import type { PlainMap, SetEdit } from '../../../src/model/editing/index.js'
import { isPlain } from './editing.js'

const pressure = fc.nat({ max: 60 }).map((psi) => `${psi} psi`)
const entry = (value: fc.Arbitrary<string>): fc.Arbitrary<unknown> =>
  fc.oneof(value, fc.constant('unknown'), fc.record({ value, evidence: fc.subarray(['P1', 'P2']) }))
const some = (model: Record<string, fc.Arbitrary<unknown>>): fc.Arbitrary<PlainMap> =>
  fc.record(model, { requiredKeys: ['id', 'name', 'kind'].filter((key) => key in model) })
const thing = (id: string, kind: string, fields: Record<string, fc.Arbitrary<unknown>>): fc.Arbitrary<PlainMap> =>
  some({ id: fc.constant(id), kind: fc.constant(kind), work: entry(fc.constantFrom('new', 'kept')), ...fields })
const count = fc.oneof(fc.nat({ max: 30 }), fc.nat({ max: 30 }).map(String), fc.constant('unknown'))
const openings = fc.subarray([
  { id: 'door', type: 'door' },
  { id: 'window', distance: '60 in' },
])

const components = fc.tuple(
  thing('B1', 'boiler', {
    mawp: entry(pressure),
    capped: entry(fc.constant('gas')).map(() => ['gas']),
    space: fc.constant('S1'),
  }),
  thing('RV1', 'reliefValve', {
    setPressure: entry(pressure),
    protects: entry(fc.constant('B1')),
    discharge: some({ size: fc.constant('3/4'), shared: entry(fc.constantFrom('yes', 'no')) }),
  }),
  thing('ISO1', 'isolationValve', { space: entry(fc.constant('S1')) }),
  thing('C1', 'circulator', { evidence: fc.subarray(['P1', 'P2'], { minLength: 1 }) }),
  thing('EX1', 'expansionTank', { precharge: entry(pressure) }),
  thing('TX1', 'transformer', { feeds: fc.oneof(fc.subarray(['ZV1', 'ZV2', 'unknown']), fc.constant('unknown')) }),
  thing('VT1', 'ventTermination', { openings: fc.oneof(openings, fc.record({ complete: count, list: openings })) }),
  fc.record({
    id: fc.constant(['ZV1', 'ZV2', 'ZV3']),
    kind: fc.constant('zoneValve'),
    power: entry(fc.constant('7 VA')),
  }),
)

const lines = fc
  .record({
    main: fc.subarray(['ISO1', 'unknown', 'C1', 'ZV1', 'ZV2.out-in']),
    tank: fc.constantFrom('unknown', 'EX1.system'),
  })
  .map(({ main, tank }) => [
    { id: 'L1', medium: 'heatingWater', path: ['B1.supply', ...main, 'B1.return'], pipe: { size: '1' } },
    { id: 'L2', medium: 'heatingWater', path: ['unknown', tank] },
    { id: 'L3', medium: 'heatingWater', path: ['B1.relief', 'RV1.inlet'] },
  ])

/** Documents that can be read, each a little different in what it says. */
export const houses: fc.Arbitrary<PlainMap> = fc.record({
  installation: fc.constant('1'),
  site: some({ snowLine: entry(fc.constant('18 in')), altitude: entry(fc.constant('310 ft')) }),
  none: fc.subarray(['airVent', 'tee', 'emitter']),
  complete: some({
    all: count,
    boiler: count,
    zoneValve: count,
    line: count,
    states: count,
    opening: count,
    pressurePart: count,
  }),
  kept: some({ list: fc.subarray(['B1', 'ISO1', 'L1']), others: fc.constantFrom('new', 'kept') }),
  components: components.map((all) => [...all]),
  lines,
  spaces: fc.constant([{ id: 'S1', use: 'mechanical' }]),
  states: fc.subarray([
    { name: 'hot', open: ['ZV1'] },
    { name: 'hot water', open: ['ZV2', 'ISO1'], energized: ['unknown'] },
  ]),
  evidence: fc.constant([{ id: 'P1', type: 'photo' }, { id: 'P2' }]),
})

/** Values of every manner, set where they belong. */
export const settings: fc.Arbitrary<SetEdit> = fc.constantFrom<SetEdit>(
  { set: 'RV1.setPressure', to: '50 psi' },
  { set: 'RV1.discharge.endHeight', to: '4 in' },
  { set: 'RV1.protects', to: { value: 'B1', how: 'drawing' } },
  { set: 'ZV2.power', to: '10 VA' },
  { set: 'B1.work', to: 'new' },
  { set: 'L2.pipe.size', to: '3/4' },
  { set: 'L2.work', to: 'kept' },
  { set: 'VT1.openings.complete', to: '3' },
  { set: 'TX1.feeds', to: ['ZV3'] },
  { set: 'site.outdoorDesign', to: '5 degF' },
  { set: 'water.meterCheck', to: 'yes' },
  { set: 'complete.airVent', to: '1' },
  { set: 'complete.all', to: '40' },
  { set: 'kept.others', to: 'new' },
  { set: 'phase', to: 'rough' },
)

/** The document with its lists turned by some steps; paths stay, for their order says something. */
export function shuffled(document: PlainMap, seed: number): PlainMap {
  return mapLists(document, (list) =>
    [...list.slice(seed % Math.max(1, list.length)), ...list.slice(0, seed % Math.max(1, list.length))].reverse(),
  )
}

/** What a document says, however it is put: lists sorted, things that are written together parted, `unknown` left out. */
export function canonical(document: PlainMap): PlainMap {
  return mapLists(withoutUnknown(document), (list) =>
    list.flatMap(eachAlone).sort((a, b) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1)),
  )
}

function withoutUnknown(map: PlainMap): PlainMap {
  const said = Object.entries(map).filter(([, value]) => value !== 'unknown')
  return Object.fromEntries(said.map(([key, value]) => [key, withoutUnknownIn(value)]))
}

function withoutUnknownIn(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutUnknownIn)
  return isPlain(value) ? withoutUnknown(value) : value
}

function eachAlone(item: unknown): readonly unknown[] {
  if (!isPlain(item) || !Array.isArray(item['id'])) return [item]
  return item['id'].map((id: unknown) => ({ ...item, id }))
}

function mapLists(map: PlainMap, change: (list: readonly unknown[]) => readonly unknown[]): PlainMap {
  return Object.fromEntries(
    Object.entries(map).map(([key, value]) => [key, key === 'path' ? value : mapValue(value, change)]),
  )
}

function mapValue(value: unknown, change: (list: readonly unknown[]) => readonly unknown[]): unknown {
  if (Array.isArray(value)) return change(value.map((member) => mapValue(member, change)))
  return isPlain(value) ? mapLists(value, change) : value
}
