import { set, type Fault } from './fault.js'

export const waterFaults: readonly Fault[] = [
  [
    'a fill of 12 psi',
    [set('FV1.setPressure', '12 psi')],
    ['must fail fill/pressure-for-height/FV1', 'should fail expansion/charge-matches-fill/EX1'],
  ],
  ['a dual check on the fill', [set('BFP1.class', 'dual-check')], ['must fail backflow/device-class/BFP1']],
  [
    'propylene glycol without its food-grade label',
    [
      set('heatingFluid.antifreeze', 'propylene-glycol'),
      set('heatingFluid.concentration', '30 %'),
      set('heatingFluid.foodGradeLabel', 'no'),
    ],
    [
      'must fail backflow/device-class/BFP1',
      'must fail expansion/tank-size/EX1',
      'should fail fill/open-on-glycol/FV1',
    ],
  ],
  [
    'an inhibitor behind a vented device',
    [set('heatingFluid.additives', ['inhibitor'])],
    ['must fail backflow/device-class/BFP1'],
  ],
  [
    'a vent of the backflow device without air gap',
    [set('BFP1.ventAirGap', 'no')],
    ['must fail backflow/device-class/BFP1', 'must fail backflow/vent-gap/BFP1'],
  ],
  [
    'no potable expansion tank behind the meter check',
    [{ remove: 'EXP2' }, set('PT3.capped', ['branch'])],
    ['must fail hot-water/closed-system/T1'],
  ],
  ['a tap at 135 F', [set('FX-tub.hotWater', '135 F')], ['stop fail hot-water/outlet-limit/FX-tub']],
  ['a shower at 125 F', [set('FX-shower.hotWater', '125 F')], ['must fail hot-water/outlet-limit/FX-shower']],
  ['a lavatory at 125 F', [set('FX-lavatory.hotWater', '125 F')], ['should fail hot-water/outlet-limit/FX-lavatory']],
  [
    'a reduced-pressure device never tested, near the floor',
    [set('BFP1.class', 'reduced-pressure'), set('BFP1.testCurrent', 'no'), set('BFP1.heightAboveFloor', '6 in')],
    ['should fail backflow/height/BFP1', 'should fail backflow/test-current/BFP1'],
  ],
  [
    'a boiler that wants an inhibitor, and none in the water',
    [set('B1.inhibitorWanted', 'yes')],
    ['must fail water/inhibitor/B1'],
  ],
  ['a shower without mixing valve', [set('FX-shower.tempered', 'no')], ['must fail hot-water/tempering/FX-shower']],
  [
    'a new shower on the master valve alone',
    [set('FX-shower.ownValve', 'no'), set('FX-shower.work', 'new')],
    ['must fail hot-water/shower-valve/FX-shower'],
  ],
  [
    'an old shower on the master valve alone',
    [set('FX-shower.ownValve', 'no')],
    ['should fail hot-water/shower-valve/FX-shower'],
  ],
  ['a shower valve for the whole house', [set('MV1.class', 'shower')], ['must fail hot-water/mixing-valve-class/MV1']],
  ['a mixing valve without checks', [set('MV1.inletChecks', 'no')], ['should fail hot-water/mixing-checks/MV1']],
  [
    'ethylene glycol against a single wall',
    [set('heatingFluid.antifreeze', 'ethylene-glycol'), set('heatingFluid.concentration', '30 %')],
    [
      'must fail backflow/device-class/BFP1',
      'must fail expansion/tank-size/EX1',
      'must fail water/accepted/B1',
      'should fail fill/open-on-glycol/FV1',
      'stop fail hot-water/coil-wall/T1',
    ],
  ],
  ['hard water', [set('water.hardness', 'hard')], ['advice fail water/hardness/water']],
]
