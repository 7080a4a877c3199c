import { set, type Fault } from './fault.js'

export const sizeFaults: readonly Fault[] = [
  [
    'a pump set too low for the boiler',
    [set('C1.setHead', '0.5 ft')],
    [
      'must fail boiler/rise/B1',
      'must fail piping/minimum-flow/B1',
      'should fail piping/zone-flow/Z1',
      'should fail piping/zone-flow/Z2',
      'should fail piping/zone-flow/Z3',
      'should fail piping/zone-flow/Z4',
    ],
  ],
  ['a boiler that allows less rise', [set('B1.maximumRise', '15 F')], ['must fail boiler/rise/B1']],
  ['the coil on pipe too small', [set('L-coil.pipe.size', '3/4')], ['should fail piping/velocity/installation']],
  ['a zone throttled too far', [set('BV2.flowCoefficient', '1.2 Cv')], ['should fail piping/zone-flow/Z2']],
  [
    'a pump that asks for more pressure at its inlet',
    [set('C1.minimumSuction', '20 psi')],
    ['must fail expansion/pump-suction/C1'],
  ],
  [
    'no relief valve at all',
    [{ remove: 'RV1' }, set('B1.capped', ['relief'])],
    [
      'must undecided expansion/tank-size/EX1',
      'should undecided boiler/gauge-range/PG1',
      'stop fail relief/capacity/B1',
      'stop fail relief/present/B1',
      'stop fail relief/way/B1',
    ],
  ],
  [
    'a fill that reaches the top without margin',
    [set('FV1.setPressure', '13 psi')],
    ['should fail expansion/charge-matches-fill/EX1', 'should fail fill/pressure-for-height/FV1'],
  ],
  [
    'propylene glycol, label not known',
    [set('heatingFluid.antifreeze', 'propylene-glycol'), set('heatingFluid.concentration', '30 %')],
    [
      'must fail expansion/tank-size/EX1',
      'must undecided backflow/device-class/BFP1',
      'should fail fill/open-on-glycol/FV1',
    ],
  ],
  [
    'propylene glycol with its label, as the town allows',
    [
      set('heatingFluid.antifreeze', 'propylene-glycol'),
      set('heatingFluid.concentration', '30 %'),
      set('heatingFluid.foodGradeLabel', 'yes'),
    ],
    ['must fail expansion/tank-size/EX1', 'should fail fill/open-on-glycol/FV1'],
  ],
  [
    'a tank kept lukewarm',
    [set('T1.storedTemperature', '115 F')],
    ['advice undecided hot-water/first-hour/T1', 'should fail hot-water/storage-temperature/T1'],
  ],
  ['an expansion tank kept from the old boiler', [set('EX1.volume', '4.4 gal')], ['must fail expansion/tank-size/EX1']],
  ['a diaphragm smaller than the swelling', [set('EX1.acceptance', '2 gal')], ['must fail expansion/acceptance/EX1']],
  ['a charge a little off', [set('EX1.precharge', '13 psi')], ['should fail expansion/charge-matches-fill/EX1']],
  [
    'a charge as it left the factory',
    [set('EX1.precharge', '40 psi')],
    ['must fail expansion/charge-matches-fill/EX1'],
  ],
  ['a potable expansion tank of 2 gal', [set('EXP2.volume', '2 gal')], ['must fail hot-water/potable-tank-size/EXP2']],
  ['fin-tube too short', [set('E9.elementLength', '15 ft')], ['must fail emitters/output/E9']],
  ['a radiator behind a cover', [set('E2.coverFactor', '90 %')], ['should fail emitters/output/E2']],
  [
    'a long branch of 1/2 in to the boiler',
    [set('G2.pipe.size', '1/2'), set('G2.pipe.length', '60 ft')],
    ['must fail gas/pipe-capacity/B1'],
  ],
  [
    'too little pressure from the street',
    [set('fuel.deliveryPressure', '3.5 in wc')],
    ['must fail gas/pressure-at-appliance/B1'],
  ],
  [
    'water too warm to condense',
    [set('Z1.designSupply', '170 F')],
    ['advice fail boiler/condensing-return/installation'],
  ],
  ['a house that bathes more', [set('building.peakHotWater', '200 gal')], ['advice fail hot-water/first-hour/T1']],
  [
    'a new bare main',
    [set('L-supply.pipe.size', '2'), set('L-supply.insulated', 'no')],
    ['advice fail piping/main-insulation/L-supply'],
  ],
]
