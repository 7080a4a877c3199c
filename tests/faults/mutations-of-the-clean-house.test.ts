import { describe, expect, it } from 'vitest'
import { checkInstallation } from '../../src/check-installation.js'
import { applyEdits, type Edit } from '../../src/model/index.js'
import { openEquipment, openSeed, openTowns } from '../houses/open-house.js'

const rulebook = openTowns('harrowmere', 'saltmarrow')
const equipment = openEquipment()
const house = openSeed('larkspur-lane')
const set = (address: string, to: unknown): Edit => ({ set: address, to })

function told(edits: readonly Edit[]): readonly string[] {
  const edited = applyEdits(house, edits, rulebook.model)
  if (!edited.ok) throw new Error(edited.problems.map((problem) => problem.message).join(' '))
  const report = checkInstallation({ ...edited.document, installation: 1 }, rulebook, { equipment })
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
  ['M3 an expansion tank of 4.4 gal', [set('EX1.volume', '4.4 gal')], ['must fail expansion/tank-size/EX1']],
  [
    'M4 fill at 12 psi',
    [set('FV1.setPressure', '12 psi')],
    ['must fail fill/pressure-for-height/FV1', 'should fail expansion/charge-matches-fill/EX1'],
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
  it.each(mutations)('%s', (_name, edits, expected) => {
    const before = told([])
    expect(
      told(edits)
        .filter((line) => !before.includes(line))
        .sort(),
    ).toEqual([...expected].sort())
  })
})
