import { set, type Fault } from './fault.js'

/** Faults of drinking water and hot water, of relief of tanks, condensate and gas pipe. */
export const drinkingWaterFaults: readonly Fault[] = [
  [
    'a fill without backflow device',
    [
      { remove: 'BFP1' },
      { remove: 'FV1' },
      { insert: { id: 'FV1', kind: 'fillValve', setPressure: '16 psi', position: 'open' } },
      { insert: { id: 'L-feed', medium: 'potableCold', path: ['PT1.branch', 'PS2', 'FV1.in'] } },
      { insert: { id: 'L-fill', medium: 'heatingWater', path: ['FV1.out', 'TE2.branch'], pipe: { size: '1/2' } } },
    ],
    [
      'must undecided expansion/acceptance/EX1',
      'must undecided expansion/tank-size/EX1',
      'should undecided piping/oxygen-barrier/L-fill',
      'stop fail backflow/all-links/B1',
    ],
  ],
  [
    'a second make-up line that nothing guards',
    [
      { insert: { id: 'PT9', kind: 'potableTee' }, in: 'L-feed', after: 'PS2' },
      { insert: { id: 'TE9', kind: 'tee', maximumPressure: '150 psi' }, in: 'L-fill', after: 'FV1' },
      { insert: { id: 'PS9', kind: 'potableStop' } },
      { insert: { id: 'L-round-in', medium: 'potableCold', path: ['PT9.branch', 'PS9.a'] } },
      { insert: { id: 'L-round-out', medium: 'heatingWater', path: ['PS9.b', 'TE9.branch'], pipe: { size: '1/2' } } },
    ],
    [
      'must undecided expansion/acceptance/EX1',
      'must undecided expansion/tank-size/EX1',
      'should undecided piping/oxygen-barrier/L-round-out',
      'stop fail backflow/all-links/B1',
    ],
  ],
  [
    'a fill valve ahead of its backflow device',
    [
      { remove: 'FV1' },
      {
        insert: { id: 'FV1', kind: 'fillValve', setPressure: '16 psi', position: 'open' },
        in: 'L-feed',
        after: 'PS2',
      },
    ],
    ['should fail backflow/before-fill/FV1', 'should fail fill/at-tank/FV1'],
  ],
  [
    'a hose tap without vacuum breaker',
    [
      { insert: { id: 'PT9', kind: 'potableTee' }, in: 'L-feed', after: 'PT1.branch' },
      { insert: { id: 'HB1', kind: 'hoseOutlet', vacuumBreaker: 'no' } },
      { insert: { id: 'L-hose', medium: 'potableCold', path: ['PT9.branch', 'HB1.in'] } },
    ],
    ['should fail backflow/hose-outlet/HB1'],
  ],
  ['a vent pipe that ends under water', [set('BFP1.ventEnd', 'submerged')], ['must fail backflow/vent-end/BFP1']],
  [
    'a reduced-pressure device over a panel, far from any drain',
    [
      set('BFP1.class', 'reduced-pressure'),
      set('BFP1.testCurrent', 'yes'),
      set('BFP1.heightAboveFloor', '20 in'),
      set('BFP1.drainNearby', 'no'),
      set('BFP1.overElectrical', 'yes'),
    ],
    ['should fail backflow/drain/BFP1'],
  ],
  [
    'unequal pressures at the mixing valve',
    [set('MV1.equalPressures', 'no')],
    ['should fail hot-water/equal-pressures/MV1'],
  ],
  [
    'a new shower for frail people without listed valve',
    [
      set('building.vulnerableUsers', 'yes'),
      set('FX-tub.vulnerableUsers', 'no'),
      set('FX-shower.vulnerableUsers', 'yes'),
      set('FX-shower-2.vulnerableUsers', 'no'),
      set('FX-shower.work', 'new'),
      set('FX-shower.ownValveListing', 'not-listed'),
    ],
    ['must fail hot-water/point-of-use/FX-shower'],
  ],
  [
    'hot water that goes round badly in every way',
    [
      {
        insert: {
          id: 'RL1',
          kind: 'recirculationLoop',
          source: 'T1',
          returnsTo: 'mixed-outlet',
          checkFitted: 'no',
          insulated: 'no',
          returnTemperature: '118 F',
          velocity: '6 ft/s',
        },
      },
    ],
    [
      'must fail hot-water/recirculation-return/RL1',
      'should fail hot-water/recirculation-insulation/RL1',
      'should fail hot-water/recirculation-temperature/RL1',
      'should fail hot-water/recirculation-velocity/RL1',
    ],
  ],
  [
    'a potable tank as it left the factory',
    [set('EXP2.precharge', '40 psi')],
    ['must fail hot-water/potable-precharge/EXP2'],
  ],
  ['a potable tank 3 psi low', [set('EXP2.precharge', '65 psi')], ['should fail hot-water/potable-precharge/EXP2']],
  [
    'a heating tank on drinking water',
    [set('EXP2.listedFor', 'heating')],
    ['must fail hot-water/expansion-tank-listing/EXP2'],
  ],
  [
    'a street at 110 psi',
    [set('water.staticPressure', '110 psi'), set('EXP2.precharge', '110 psi')],
    ['must fail hot-water/street-pressure/water', 'must undecided hot-water/potable-tank-size/EXP2'],
  ],
  [
    'a street at 110 psi behind a reducer',
    [
      set('water.staticPressure', '110 psi'),
      {
        insert: { id: 'PR1', kind: 'pressureReducer', setPressure: '68 psi', bypass: 'no' },
        in: 'L-cold',
        after: 'PS1',
      },
    ],
    ['must undecided hot-water/potable-tank-size/EXP2'],
  ],
  [
    'a tank above finished rooms without pan',
    [set('T1.aboveFinishedSpace', 'yes'), set('T1.pan', 'missing')],
    ['should fail hot-water/pan/T1'],
  ],
  ['copper straight on steel', [set('T1.nipples', 'steel-to-copper')], ['advice fail hot-water/dielectric/T1']],
  [
    'built-in hot water at 135 F to a shower',
    [
      {
        insert: {
          id: 'BH1',
          kind: 'builtInWaterHeater',
          boiler: 'B1',
          storedTemperature: '135 F',
          capped: ['cold', 'hot'],
        },
      },
      set('FX-shower.supply', 'BH1'),
      set('FX-shower.tempered', 'no'),
      set('FX-shower.hotWater', '135 F'),
    ],
    ['must fail hot-water/tempering/FX-shower', 'stop fail hot-water/outlet-limit/FX-shower'],
  ],
  [
    'a relief valve that spills into the condensate pipe',
    [set('RV1.discharge.into', 'condensate-line')],
    ['must fail relief/discharge-into/RV1'],
  ],
  ['a relief pipe that ends unseen', [set('RV2.discharge.visible', 'no')], ['must fail relief/discharge-into/RV2']],
  [
    'a T&P valve on the boiler',
    [set('RV1.type', 'temperature-and-pressure')],
    ['must undecided relief/temperature-limits/RV1', 'stop fail relief/boiler-type/RV1'],
  ],
  [
    'a reducer on the cold side of the mixing valve alone',
    [
      set('MV1.coldSource', 'unknown'),
      {
        insert: { id: 'PR1', kind: 'pressureReducer', setPressure: '68 psi', bypass: 'no' },
        in: 'L-mix-cold',
        after: 'PT2.branch',
      },
    ],
    ['should fail hot-water/cold-of-mixing-valve/MV1'],
  ],
  [
    'a kitchen outlet drawn ahead of the mixing valve',
    [
      set('FX-sink.tempered', 'unknown'),
      { insert: { id: 'PT9', kind: 'potableTee' }, in: 'L-hot', after: 'T1.hot' },
      { insert: { id: 'FO9', kind: 'fixtureOutlet', fixture: 'FX-sink' } },
      { insert: { id: 'L-sink', medium: 'potableHot', path: ['PT9.branch', 'FO9.hot'] } },
    ],
    ['should fail hot-water/tempering/FX-sink'],
  ],
  [
    'a stop before the T&P valve of the tank',
    [{ insert: { id: 'BAD', kind: 'potableStop' }, in: 'L-tp', after: 'T1.relief' }],
    ['must fail relief/tank-valve/T1'],
  ],
  [
    'a pressure valve where the tank needs a T&P valve',
    [set('RV2.type', 'pressure'), set('RV2.discharge.endHeight', '5 in')],
    ['must fail relief/tank-valve/T1', 'should undecided relief/tapping-size/RV2'],
  ],
  [
    'a water heater without T&P valve',
    [
      {
        insert: {
          id: 'WH9',
          kind: 'waterHeater',
          fuel: 'natural-gas',
          venting: 'direct',
          input: '20000 Btu/h',
          aboveFinishedSpace: 'no',
          capped: ['relief', 'cold', 'hot'],
        },
      },
    ],
    [
      'must fail relief/heater-valve/WH9',
      'must undecided gas/pipe-capacity/WH9',
      'must undecided hot-water/potable-tank-size/EXP2',
    ],
  ],
  [
    'a boiler without condensate trap',
    [{ remove: 'TR1' }, set('B1.trapBuiltIn', 'no')],
    ['must fail condensate/trap-first/B1'],
  ],
  [
    'a softener that drains into the condensate',
    [
      { insert: { id: 'CT9', kind: 'condensateTee' }, in: 'L-condensate', after: 'TR1' },
      { insert: { id: 'L-softener', medium: 'condensate', path: ['CT9.branch', 'unknown'] } },
      set('B1.condensateAlone', 'no'),
    ],
    [
      'must undecided condensate/metal-ahead/B1',
      'must undecided condensate/neutralizer/B1',
      'should fail condensate/own-line/B1',
      'should undecided condensate/freezing/L-softener',
    ],
  ],
  [
    'a neutralizer ahead of the trap',
    [
      { remove: 'TR1' },
      set('B1.trapBuiltIn', 'no'),
      {
        insert: { id: 'TR1', kind: 'condensateTrap', filled: 'yes', indoors: 'yes' },
        in: 'L-condensate',
        after: 'NE1',
      },
    ],
    ['must fail condensate/trap-first/B1'],
  ],
  [
    'the gas shutoff behind trap and union',
    [{ remove: 'SV1' }, { insert: { id: 'SV1', kind: 'gasShutoff', appliance: 'B1' }, in: 'G2', before: 'B1.gas' }],
    ['must fail gas/trap-order/B1'],
  ],
  [
    'a line regulator for the boiler alone, its vent plugged',
    [
      {
        insert: { id: 'GR1', kind: 'gasRegulator', stage: 'line', vent: 'plugged' },
        in: 'G2',
        after: 'TG1.branch',
      },
    ],
    ['must fail gas/regulator-order/GR1'],
  ],
  ['condensate onto the ground outdoors', [set('DR1.type', 'outdoors')], ['should fail condensate/outdoors/DR1']],
  ['a condensate trap in the crawl space', [set('TR1.indoors', 'no')], ['should fail condensate/trap-indoors/TR1']],
  ['a gas shutoff behind panels', [set('B1.gasShutoffAccessible', 'no')], ['must fail gas/shutoff-accessible/B1']],
  ['a gas meter too small', [set('GM1.capacity', '120 ft3/h')], ['should fail gas/meter-capacity/GM1']],
]
