import { describe, expect, it } from 'vitest'
import { checkInstallation } from '../../src/check-installation.js'
import { applyEdits, type Edit } from '../../src/model/index.js'
import { openEquipment, openSeed, openTowns } from '../houses/open-house.js'

const rulebook = openTowns('harrowmere')
const equipment = openEquipment()
const house = openSeed('larkspur-lane')

/** What the clean house says before anything is planted. */
const before = ['should undecided safety/co-alarm/hall-2']

function told(edits: readonly Edit[]): readonly string[] {
  const edited = applyEdits(house, edits, rulebook.model)
  if (!edited.ok) throw new Error(edited.problems.map((problem) => problem.message).join(' '))
  const report = checkInstallation({ ...edited.document, installation: 1 }, rulebook, {
    equipment,
    judgedOn: '2025-11-01',
  })
  expect(report.contradictions).toEqual([])
  return report.findings
    .map(({ severity, verdict, key }) => `${severity} ${verdict} ${key}`)
    .filter((line) => !before.includes(line))
}

const set = (address: string, to: unknown): Edit => ({ set: address, to })

/** A fault planted alone in the clean house, and everything that it makes the report say. Companions are listed. */
const faults: readonly (readonly [string, readonly Edit[], readonly string[]])[] = [
  [
    'a ball valve between boiler and relief valve',
    [
      {
        insert: { id: 'BAD', kind: 'isolationValve', locked: 'no', maximumPressure: '150 psi' },
        in: 'L-relief',
        after: 'B1.relief',
      },
    ],
    ['stop fail relief/way/B1'],
  ],
  [
    'the same valve locked open still closes nothing, but the relief valve is off the boiler',
    [
      {
        insert: { id: 'BAD', kind: 'isolationValve', locked: 'open', maximumPressure: '150 psi' },
        in: 'L-relief',
        after: 'B1.relief',
      },
    ],
    ['must fail relief/way/B1'],
  ],
  [
    'a strainer before the relief valve',
    [{ insert: { id: 'BAD', kind: 'dirtSeparator', maximumPressure: '150 psi' }, in: 'L-relief', after: 'B1.relief' }],
    ['stop fail relief/way/B1'],
  ],
  [
    'a check valve before the relief valve',
    [{ insert: { id: 'BAD', kind: 'checkValve', maximumPressure: '150 psi' }, in: 'L-relief', after: 'B1.relief' }],
    ['stop fail relief/way/B1'],
  ],
  ['a relief valve set above the nameplate', [set('RV1.setPressure', '60 psi')], ['stop fail relief/setting/B1']],
  ['a radiator weaker than the relief setting', [set('E4.maximumPressure', '25 psi')], ['must fail relief/setting/B1']],
  ['a relief valve too small for the boiler', [set('RV1.capacity', '60000 Btu/h')], ['stop fail relief/capacity/B1']],
  [
    'no relief valve at all',
    [{ remove: 'RV1' }, set('B1.capped', ['relief'])],
    ['stop fail relief/capacity/B1', 'stop fail relief/present/B1', 'stop fail relief/way/B1'],
  ],
  [
    'a relief pipe that ends in a thread',
    [set('RV1.discharge.end', 'threaded')],
    ['stop fail relief/discharge-end/RV1'],
  ],
  ['a relief pipe narrowed to 1/2', [set('RV1.discharge.size', '1/2')], ['must fail relief/discharge-size/RV1']],
  ['a relief pipe that rises', [set('RV1.discharge.slopesDown', 'no')], ['must fail relief/discharge-gravity/RV1']],
  [
    'a boiler relief pipe that ends 40 in above the floor',
    [set('RV1.discharge.endHeight', '40 in')],
    ['must fail relief/discharge-height/RV1'],
  ],
  [
    'a T&P pipe that ends 12 in above the floor',
    [set('RV2.discharge.endHeight', '12 in')],
    ['must fail relief/discharge-height-tank/RV2'],
  ],
  ['two relief valves in one pipe', [set('RV1.discharge.shared', 'yes')], ['must fail relief/discharge-own-line/RV1']],
  ['a fill of 12 psi', [set('FV1.setPressure', '12 psi')], ['must fail fill/pressure-for-height/FV1']],
  [
    'a fill that reaches the top without margin',
    [set('FV1.setPressure', '13 psi')],
    ['should fail fill/pressure-for-height/FV1'],
  ],
  ['a dual check on the fill', [set('BFP1.class', 'dual-check')], ['must fail backflow/device-class/BFP1']],
  [
    'propylene glycol without its food-grade label',
    [
      set('heatingFluid.antifreeze', 'propylene-glycol'),
      set('heatingFluid.concentration', '30 %'),
      set('heatingFluid.foodGradeLabel', 'no'),
    ],
    ['must fail backflow/device-class/BFP1'],
  ],
  [
    'propylene glycol, label not known',
    [set('heatingFluid.antifreeze', 'propylene-glycol'), set('heatingFluid.concentration', '30 %')],
    ['must undecided backflow/device-class/BFP1'],
  ],
  [
    'propylene glycol with its label, as the town allows',
    [
      set('heatingFluid.antifreeze', 'propylene-glycol'),
      set('heatingFluid.concentration', '30 %'),
      set('heatingFluid.foodGradeLabel', 'yes'),
    ],
    [],
  ],
  [
    'an inhibitor behind a vented device',
    [set('heatingFluid.additives', ['inhibitor'])],
    ['must fail backflow/device-class/BFP1'],
  ],
  [
    'a vent of the backflow device without air gap',
    [set('BFP1.ventAirGap', 'no')],
    ['must fail backflow/device-class/BFP1'],
  ],
  [
    'no potable expansion tank behind the meter check',
    [{ remove: 'EXP2' }, set('PT3.capped', ['branch'])],
    ['must fail hot-water/closed-system/T1'],
  ],
  ['a tap at 135 F', [set('FX-tub.hotWater', '135 F')], ['stop fail hot-water/outlet-limit/FX-tub']],
  ['a shower at 125 F', [set('FX-shower.hotWater', '125 F')], ['must fail hot-water/outlet-limit/FX-shower']],
  ['a lavatory at 125 F', [set('FX-lavatory.hotWater', '125 F')], ['should fail hot-water/outlet-limit/FX-lavatory']],
  ['cellular-core exhaust pipe', [set('VR1.material', 'pvc-cellular')], ['must fail vent/exhaust-material/VR1']],
  ['four more elbows, which the maker allows', [set('VR1/quarter-bends.count', '7')], []],
  ['six more elbows', [set('VR1/quarter-bends.count', '9')], ['must fail vent/length/VR1']],
  ['a terminal at 28 in', [set('VT1.heightAboveGrade', '28 in')], ['must fail vent/termination-height/VT1']],
  ['no neutralizer before the iron drain', [{ remove: 'NE1' }], ['must fail condensate/neutralizer/B1']],
  [
    'an old galvanized drip line before the neutralizer',
    [set('L-condensate.pipe.type', 'galvanized-steel')],
    ['must fail condensate/metal-ahead/B1'],
  ],
  [
    'a 40 VA transformer: inside its plate, above the practice share',
    [set('TX1.rating', '40 VA')],
    ['should fail electrical/transformer-load/TX1'],
  ],
  ['a 30 VA transformer', [set('TX1.rating', '30 VA')], ['must fail electrical/transformer-load/TX1']],
  ['no alarm outside the bedrooms', [{ remove: 'CO3' }], ['should fail safety/co-alarm/hall-2']],
  [
    'a small heater left alone on the old chimney',
    [
      { insert: { id: 'CF1', kind: 'chimneyFlue', area: '72.6 in2' } },
      {
        insert: {
          id: 'WH1',
          kind: 'waterHeater',
          fuel: 'natural-gas',
          venting: 'draft-hood',
          draftHoodArea: '7.07 in2',
          flue: 'CF1',
          capped: ['relief', 'cold', 'hot'],
        },
      },
    ],
    ['must fail vent/orphaned-heater/WH1'],
  ],
]

describe('faults planted alone in the clean house', () => {
  it.each(faults)('%s', (_name, edits, expected) => {
    expect([...told(edits)].sort()).toEqual([...expected].sort())
  })

  it('between them fire every rule that the package ships', () => {
    const fired = new Set(
      faults.flatMap(([, , lines]) =>
        lines
          .filter((line) => line.includes(' fail '))
          .map((line) => line.split(' ')[2]?.split('/').slice(0, 2).join('/')),
      ),
    )
    expect(rulebook.rules.map((rule) => rule.id).filter((id) => !fired.has(id))).toEqual([])
  })
})
