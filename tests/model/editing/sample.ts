import { builtInKinds, choice, defineModel, tryReadInstallation } from '../../../src/model/index.js'
import type { PlainMap } from '../../../src/model/editing/index.js'

export const model = defineModel(builtInKinds, [
  { of: 'boiler', name: 'reliefWay', field: choice({ open: 'open', blocked: 'blocked', absent: 'absent' }) },
])

/** A small house that holds one of everything that edits treat in a way of its own. */
export const house: PlainMap = deepFreeze({
  installation: '1',
  name: 'Larkspur Lane',
  phase: 'final',
  site: { altitude: '310 ft', snowLine: '18 in' },
  heatingFluid: { additives: ['inhibitor', 'unknown'] },
  jurisdiction: { authorities: ['harrowmere'], codes: { irc: '2018', nec: '2020' }, applicationDate: '2025-09-03' },
  none: ['airVent', 'waterHeater'],
  complete: {
    all: '17',
    boiler: '1',
    zoneValve: '3',
    closable: '2',
    line: '4',
    pressurePart: 7,
    opening: '2',
    states: '2',
  },
  kept: { list: ['EX1', 'ISO1', 'L-tank'], others: 'new' },
  removed: [{ id: 'OB1', kind: 'boiler', serves: 'heating' }],
  components: [
    {
      id: 'B1',
      kind: 'boiler',
      mawp: { value: '50 psi', how: 'nameplate', evidence: ['P1', 'P2'] },
      reliefWay: 'open',
      capped: ['condensate'],
    },
    {
      id: 'RV1',
      kind: 'reliefValve',
      setPressure: '30 psi',
      protects: 'B1',
      discharge: { size: '3/4', shared: 'no' },
      evidence: ['P1'],
    },
    { id: 'ISO1', kind: 'isolationValve', locked: 'open', space: 'S1' },
    { id: 'ISO2', kind: 'isolationValve', space: 'S1', work: 'new' },
    { id: 'C1', kind: 'circulator' },
    { id: 'EX1', kind: 'expansionTank', volume: '10.3 gal', precharge: 'unknown' },
    { id: ['ZV1', 'ZV2', 'ZV3'], kind: 'zoneValve', power: '7.68 VA' },
    { id: 'TX1', kind: 'transformer', rating: '40 VA', feeds: { value: ['ZV1', 'ZV2', 'ZV3'], how: 'drawing' } },
    {
      id: 'VT1',
      kind: 'ventTermination',
      openings: {
        complete: '2',
        list: [
          { id: 'window-east', type: 'operable-window', distance: '60 in' },
          { id: 'door', type: 'door' },
        ],
      },
    },
  ],
  lines: [
    { id: 'L-relief', medium: 'heatingWater', path: ['B1.relief', 'RV1.inlet'] },
    {
      id: 'L-main',
      medium: 'heatingWater',
      path: ['B1.supply', 'ISO1', 'C1', 'ZV1', 'B1.return'],
      pipe: { type: 'copper-M', size: '1-1/4' },
    },
    { id: 'L-tank', medium: 'heatingWater', path: ['unknown', 'ISO2.b-a', 'EX1.system'] },
    { id: 'L-out', medium: 'discharge', path: ['RV1.outlet', 'unknown'], pipe: { size: '3/4' } },
  ],
  spaces: [{ id: 'S1', use: 'mechanical' }],
  states: [
    { name: 'hot', open: ['ZV1'] },
    { name: 'hot water', open: ['ZV2', 'ISO1'], energized: ['ZV2', 'ZV3'] },
  ],
  readings: [{ id: 'R1', quantity: 'supply temperature', value: '160 degF' }],
  evidence: [
    { id: 'P1', type: 'photo' },
    { id: 'P2', type: 'photo' },
  ],
  approved: [
    {
      rule: 'relief/size',
      subject: 'RV1',
      accepts: { 'reliefValve.setPressure': { atMost: '50 psi' } },
      by: 'office',
      evidence: ['P2'],
    },
  ],
  'x-note': 'evidence P1 hangs in the mechanical room',
})

/** Problems that reading finds in a document; none where it can be read. */
export function problemsIn(document: unknown): readonly string[] {
  const read = tryReadInstallation(document, model)
  return read.ok ? [] : read.problems.map((problem) => `${problem.pointer} ${problem.message}`)
}

export function deepFreeze<T>(value: T): T {
  if (typeof value !== 'object' || value === null) return value
  for (const inner of Object.values(value)) deepFreeze(inner)
  return Object.freeze(value)
}
