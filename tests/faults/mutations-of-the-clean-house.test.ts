import { describe, expect, it } from 'vitest'
import { checkInstallation } from '../../src/check-installation.js'
import { applyEdits, isMap, type Edit } from '../../src/model/index.js'
import { openEquipment, openSeed, openTowns } from '../houses/open-house.js'
import { inSi } from '../laws/in-si.js'

const rulebook = openTowns('harrowmere', 'saltmarrow')
const equipment = openEquipment()
const house = openSeed('larkspur-lane')
const set = (address: string, to: unknown): Edit => ({ set: address, to })

function changed(edits: readonly Edit[]): unknown {
  const edited = applyEdits(house, edits, rulebook.model)
  if (!edited.ok) throw new Error(edited.problems.map((problem) => problem.message).join(' '))
  return edited.document
}

function told(document: unknown): readonly string[] {
  const report = checkInstallation({ ...(isMap(document) ? document : {}), installation: 1 }, rulebook, { equipment })
  expect(report.contradictions).toEqual([])
  return report.findings.map(({ severity, verdict, key }) => `${severity} ${verdict} ${key}`)
}

/** One change each, and everything new that the report says for the rules that exist. */
const mutations: readonly (readonly [string, readonly Edit[], readonly string[]])[] = [
  [
    'M1 a shutoff valve before the relief valve',
    [
      {
        insert: { id: 'ISO9', kind: 'isolationValve', locked: 'no', maximumPressure: '150 psi' },
        in: 'L-relief',
        after: 'B1.relief',
      },
    ],
    ['stop fail relief/way/B1'],
  ],
  [
    'M2 the pump before the tank',
    [set('L-supply.path', ['B1.supply', 'TE1', 'ISO1', 'ISO4', 'C1', 'ISO5', 'AS1', 'HS.main'])],
    ['should fail expansion/pump-away/EX1'],
  ],
  ['M3 an expansion tank of 4.4 gal', [set('EX1.volume', '4.4 gal')], ['must fail expansion/tank-size/EX1']],
  [
    'M4 fill at 12 psi',
    [set('FV1.setPressure', '12 psi')],
    ['must fail fill/pressure-for-height/FV1', 'should fail expansion/charge-matches-fill/EX1'],
  ],
  [
    'M5 the mixing valve gone, the shower drawn from the tank',
    [
      { remove: 'MV1' },
      set('FX-shower.tempered', 'unknown'),
      { insert: { id: 'FO9', kind: 'fixtureOutlet', fixture: 'FX-shower' } },
      { insert: { id: 'L-shower', medium: 'potableHot', path: ['T1.hot', 'FO9.hot'] } },
    ],
    ['advice undecided hot-water/first-hour/T1', 'must fail hot-water/tempering/FX-shower'],
  ],
  [
    'M5 the same in plain words',
    [
      { remove: 'MV1' },
      ...['FX-shower', 'FX-shower-2', 'FX-tub', 'FX-lavatory', 'FX-sink'].map((id) => set(`${id}.tempered`, 'no')),
    ],
    [
      'advice undecided hot-water/first-hour/T1',
      'must fail hot-water/tempering/FX-shower',
      'must fail hot-water/tempering/FX-shower-2',
      'must fail hot-water/tempering/FX-tub',
      'should fail hot-water/tempering/FX-lavatory',
      'should fail hot-water/tempering/FX-sink',
    ],
  ],
  [
    'M6 the kitchen on a tee ahead of the mixing valve',
    [
      set('FX-sink.tempered', 'unknown'),
      set('FX-sink.hotWater', '138 F'),
      { insert: { id: 'PT9', kind: 'potableTee' }, in: 'L-hot', after: 'T1.hot' },
      { insert: { id: 'FO9', kind: 'fixtureOutlet', fixture: 'FX-sink' } },
      { insert: { id: 'L-sink', medium: 'potableHot', path: ['PT9.branch', 'FO9.hot'] } },
    ],
    ['should fail hot-water/outlet-limit/FX-sink', 'should fail hot-water/tempering/FX-sink'],
  ],
  ['M7 the neutralizer gone from before the floor drain', [{ remove: 'NE1' }], ['must fail condensate/neutralizer/B1']],
  ['M8 four more elbows: 60.5 ft, nothing', [set('VR1/quarter-bends.count', '7')], []],
  ['M8 six more elbows: 70.5 ft', [set('VR1/quarter-bends.count', '9')], ['must fail vent/length/VR1']],
  ['M9 a 40 VA transformer: 95 %', [set('TX1.rating', '40 VA')], ['should fail electrical/transformer-load/TX1']],
  [
    'M10 30 % propylene glycol under Harrowmere, its label not known',
    [set('heatingFluid.antifreeze', 'propylene-glycol'), set('heatingFluid.concentration', '30 %')],
    [
      'must fail expansion/tank-size/EX1',
      'must undecided backflow/device-class/BFP1',
      'should fail fill/open-on-glycol/FV1',
    ],
  ],
  [
    'M10 the same under the model codes alone',
    [
      set('jurisdiction.authorities', []),
      set('heatingFluid.antifreeze', 'propylene-glycol'),
      set('heatingFluid.concentration', '30 %'),
    ],
    [
      'must fail backflow/device-class/BFP1',
      'must fail expansion/tank-size/EX1',
      'should fail fill/open-on-glycol/FV1',
    ],
  ],
  [
    'M11 a relief valve of 60 psi',
    [set('RV1.setPressure', '60 psi')],
    ['should fail boiler/gauge-range/PG1', 'stop fail relief/setting/B1'],
  ],
  [
    'M12 no check at the meter: the cold side is open, nothing is asked',
    [set('water.meterCheck', 'no'), { remove: 'PC1' }, { remove: 'EXP2' }, set('PT3.capped', ['branch'])],
    [],
  ],
  [
    'M13 the height of the study panels forgotten',
    [{ forget: 'E10.topElevation' }, { forget: 'E11.topElevation' }],
    ['must undecided expansion/tank-size/EX1', 'must undecided fill/pressure-for-height/FV1'],
  ],
  [
    'M14 60 ft of 1/2 in. to the boiler',
    [set('G2.pipe.size', '1/2'), set('G2.pipe.length', '60 ft')],
    ['must fail gas/pipe-capacity/B1'],
  ],
  ['M15 a terminal at 28 in', [set('VT1.heightAboveGrade', '28 in')], ['must fail vent/termination-height/VT1']],
]

describe('one change in the clean house', () => {
  const before = told(house)
  const fresh = (document: unknown): readonly string[] => told(document).filter((line) => !before.includes(line))

  it.each(mutations)('%s', (_name, edits, expected) => {
    expect([...fresh(changed(edits))].sort()).toEqual([...expected].sort())
  })

  it('M16 says the same of the house and of each change when all is written in SI', () => {
    for (const [name, edits] of [['the clean house', []] as const, ...mutations]) {
      const document = changed(edits)
      expect([name, told(inSi(document, rulebook.model))]).toEqual([name, told(document)])
    }
  })
})
