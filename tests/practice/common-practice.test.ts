import { describe, expect, it } from 'vitest'
import { checkInstallation } from '../../src/check-installation.js'
import { applyEdits, type Edit } from '../../src/model/index.js'
import { openEquipment, openSeed, openTowns } from '../houses/open-house.js'

const rulebook = openTowns('harrowmere', 'saltmarrow')
const equipment = openEquipment()
const house = openSeed('larkspur-lane')

function failing(edits: readonly Edit[]): readonly string[] {
  const nobody: Edit = { set: 'jurisdiction.authorities', to: [] }
  const edited = applyEdits(house, [nobody, ...edits], rulebook.model)
  if (!edited.ok) throw new Error(edited.problems.map((problem) => problem.message).join(' '))
  const report = checkInstallation({ ...edited.document, installation: 1 }, rulebook, { equipment })
  return report.findings
    .filter((finding) => finding.verdict === 'fail' && finding.severity !== 'advice')
    .map(({ severity, key }) => `${severity} ${key}`)
}

const set = (address: string, to: unknown): Edit => ({ set: address, to })
const untempered = ['FX-tub', 'FX-shower', 'FX-shower-2', 'FX-lavatory', 'FX-sink'].map((id) =>
  set(`${id}.tempered`, 'no'),
)
const valves = (count: number): readonly Edit[] =>
  Array.from({ length: count }, (_, index): Edit => ({
    insert: { id: `V${index}`, kind: 'thermostat', power: '7 VA' },
  }))
const loaded = (count: number): readonly Edit[] => [
  ...valves(count),
  set('TX1.rating', '40 VA'),
  set(
    'TX1.feeds',
    Array.from({ length: count }, (_, index) => `V${index}`),
  ),
]

/** Every row: common practice, no source. */
const rows: readonly (readonly [string, readonly Edit[], readonly string[]])[] = [
  ['hot water stored at 140 F and tempered to 120 F at the taps passes', [set('FX-tub.hotWater', '120 F')], []],
  ['stored at 145 F and tempered it passes as well', [set('T1.storedTemperature', '145 F')], []],
  [
    'the same store untempered at shower and tub does not',
    untempered,
    [
      'must hot-water/tempering/FX-shower',
      'must hot-water/tempering/FX-shower-2',
      'must hot-water/tempering/FX-tub',
      'should hot-water/tempering/FX-lavatory',
      'should hot-water/tempering/FX-sink',
    ],
  ],
  [
    'a vented device on an untreated house boiler passes where the town asks no more',
    [set('BFP1.class', 'vented')],
    [],
  ],
  [
    'not with antifreeze',
    [
      set('heatingFluid.antifreeze', 'propylene-glycol'),
      set('heatingFluid.concentration', '30 %'),
      set('FV1.position', 'closed'),
    ],
    ['must backflow/device-class/BFP1', 'must expansion/tank-size/EX1'],
  ],
  [
    'and not where the town wants a reduced-pressure device',
    [set('jurisdiction.authorities', ['saltmarrow']), set('building.storeys', '4')],
    ['must backflow/device-class/BFP1'],
  ],
  [
    'polypropylene exhaust with PVC intake passes where the maker lists both',
    [set('VR1.material', 'polypropylene-ul1738'), set('VR2.material', 'pvc-solid')],
    [],
  ],
  ['condensate into cast iron without a neutralizer does not', [{ remove: 'NE1' }], ['must condensate/neutralizer/B1']],
  ['ten devices of 7 VA do not fit a 40 VA transformer at once', loaded(10), ['must electrical/transformer-load/TX1']],
  [
    'five do: 88 %, above the practice share and inside the rating',
    loaded(5),
    ['should electrical/transformer-load/TX1'],
  ],
  [
    'a zone under constant circulation is right for outdoor reset, while its valve shuts for hot water',
    [set('Z1.control', 'constant'), set('state heating.open', ['ZV1', 'ZV2', 'ZV3', 'ZV4'])],
    [],
  ],
  [
    'and is not where it stays open while hotter water is made for the tank first',
    [set('state hot water.open', ['ZV1', 'ZV5'])],
    ['should hot-water/zones-closed-on-priority/state hot water'],
  ],
]

describe('common practice, no source', () => {
  it.each(rows)('%s', (_name, edits, expected) => {
    const found = failing(edits)
    expect(found.filter((line) => expected.includes(line)).sort()).toEqual([...expected].sort())
    const more = edits.some((edit) => 'set' in edit && edit.set === 'jurisdiction.authorities')
    if (!more) expect(found).toHaveLength(expected.length)
  })
})
