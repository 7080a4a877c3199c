import { set, type Fault } from './fault.js'

/** Faults of the heating water: its order, its tanks, its pumps and its pipe. */
export const heatingFaults: readonly Fault[] = [
  [
    'the pump moved before the tank',
    [
      { remove: 'C1' },
      {
        insert: {
          id: 'C9',
          kind: 'circulator',
          serves: 'system',
          checkBuiltIn: 'yes',
          mode: 'constant-pressure',
          isolationFlanges: 'yes',
          maximumPressure: '145 psi',
        },
        in: 'L-supply',
        after: 'ISO1',
      },
    ],
    [
      'must undecided boiler/rise/B1',
      'must undecided expansion/pump-suction/C9',
      'must undecided piping/minimum-flow/B1',
      'should fail expansion/pump-away/EX1',
      'should fail piping/zone-flow/Z1',
      'should fail piping/zone-flow/Z2',
      'should fail piping/zone-flow/Z3',
      'should fail piping/zone-flow/Z4',
    ],
  ],
  ['a tank valve that anybody can shut', [set('EXV1.locked', 'no')], ['should fail expansion/tank-shut-off/EX1']],
  [
    'a second tank on the other side of the pump',
    [
      { insert: { id: 'TE9', kind: 'tee', maximumPressure: '150 psi' }, in: 'L-supply', after: 'ISO5' },
      {
        insert: {
          id: 'EX9',
          kind: 'expansionTank',
          volume: '4.4 gal',
          maximumPressure: '100 psi',
          precharge: '16 psi',
          prechargeWaterSideEmpty: 'yes',
          type: 'diaphragm',
          support: 'bracket',
        },
      },
      {
        insert: {
          id: 'L-ex9',
          medium: 'heatingWater',
          path: ['TE9.branch', 'EX9.system'],
          pipe: { type: 'copper-M', size: '1/2', length: '1 ft' },
        },
      },
    ],
    [
      'must undecided expansion/acceptance/EX9',
      'must undecided expansion/pump-suction/C1',
      'should fail expansion/one-connection/EX1',
      'should fail expansion/one-connection/EX9',
      'should fail expansion/pump-away/EX9',
    ],
  ],
  [
    'the fill behind the pump',
    [
      { remove: 'L-fill' },
      set('TE2.capped', ['branch']),
      { insert: { id: 'TE9', kind: 'tee', maximumPressure: '150 psi' }, in: 'L-supply', after: 'ISO5' },
      {
        insert: {
          id: 'L-fill-9',
          medium: 'heatingWater',
          path: ['BFP1.out', 'FV1', 'TE9.branch'],
          pipe: { type: 'copper-M', size: '1/2', length: '1 ft' },
        },
      },
    ],
    ['should fail fill/at-tank/FV1'],
  ],
  [
    'propylene glycol with its label, the fill left open',
    [
      set('heatingFluid.antifreeze', 'propylene-glycol'),
      set('heatingFluid.concentration', '30 %'),
      set('heatingFluid.foodGradeLabel', 'yes'),
    ],
    ['must fail expansion/tank-size/EX1', 'should fail fill/open-on-glycol/FV1'],
  ],
  [
    'the gauge behind a valve',
    [
      set('B1.gaugeBuiltIn', 'no'),
      {
        insert: { id: 'BAD', kind: 'isolationValve', locked: 'no', maximumPressure: '150 psi' },
        in: 'L-gauge',
        after: 'TE1.branch',
      },
    ],
    ['should fail boiler/gauge-in-volume/B1'],
  ],
  ['a gauge to 200 psi', [set('PG1.high', '200 psi')], ['should fail boiler/gauge-range/PG1']],
  [
    'a low-water cutoff in the return behind its valve, to be tested by draining',
    [
      { insert: { id: 'TE9', kind: 'tee', maximumPressure: '150 psi' }, in: 'L-return', after: 'DS1' },
      { insert: { id: 'LW9', kind: 'lowWaterCutoff', test: 'drain-down', maximumPressure: '150 psi' } },
      {
        insert: {
          id: 'L-lw9',
          medium: 'heatingWater',
          path: ['TE9.branch', 'LW9.port'],
          pipe: { type: 'copper-M', size: '1/2', length: '1 ft' },
        },
      },
    ],
    ['must fail boiler/low-water-place/LW9', 'should fail boiler/low-water-test/LW9'],
  ],
  [
    'another air separator in the cool return',
    [
      {
        insert: { id: 'AS9', kind: 'airSeparator', capped: ['tank', 'vent'], maximumPressure: '150 psi' },
        in: 'L-return',
        after: 'DS1',
      },
    ],
    [
      'must undecided boiler/rise/B1',
      'must undecided expansion/pump-suction/C1',
      'must undecided piping/minimum-flow/B1',
      'should fail air/air-separator-place/AS9',
      'should undecided piping/velocity/installation',
      'should undecided piping/zone-flow/Z1',
      'should undecided piping/zone-flow/Z2',
      'should undecided piping/zone-flow/Z3',
      'should undecided piping/zone-flow/Z4',
    ],
  ],
  [
    'a bare air cushion below an automatic vent',
    [set('EX1.type', 'air-cushion')],
    ['must fail expansion/tank-size/EX1', 'should fail air/cushion-with-vent/EX1'],
  ],
  ['no dirt separator behind the old radiators', [{ remove: 'DS1' }], ['should fail boiler/dirt-separator/B1']],
  [
    'a zone that stays open while hot water is made',
    [
      {
        insert: { name: 'hot water and zone 2', purpose: 'hot-water', open: ['ZV2', 'ZV5'], energized: ['ZV1', 'ZV2'] },
        section: 'states',
      },
    ],
    [
      'must undecided boiler/rise/B1',
      'must undecided expansion/pump-suction/C1',
      'must undecided piping/minimum-flow/B1',
      'should fail hot-water/zones-closed-on-priority/state hot water and zone 2',
      'should undecided piping/velocity/installation',
    ],
  ],
  ['a pump without a check', [set('C1.checkBuiltIn', 'no')], ['should fail piping/ghost-flow/B1']],
  ['a pump of constant speed', [set('C1.mode', 'constant-speed')], ['should fail piping/dead-head/C1']],
  ['pipe without oxygen barrier', [set('L-e10.pipe.type', 'pex')], ['should fail piping/oxygen-barrier/L-e10']],
  [
    'closely spaced tees 30 in apart',
    [
      {
        insert: {
          id: 'CT9',
          kind: 'closelySpacedTees',
          spacing: '30 in',
          size: '1-1/4',
          capped: ['secondaryOut', 'secondaryIn'],
          maximumPressure: '150 psi',
        },
        in: 'L-supply',
        after: 'ISO5',
      },
    ],
    ['should fail piping/tee-spacing/CT9', 'should undecided boiler/separator-return/B1'],
  ],
  ['a pump without flanges', [set('C1.isolationFlanges', 'no')], ['advice fail piping/pump-service/C1']],
  [
    'a line of plain water through a cold attic',
    [
      { forget: 'heatingFluid.canFreeze' },
      set('L-e10.exposure', 'unheated'),
      set('L-e10.freezeProtected', 'no'),
      set('L-e10.spaces', ['study']),
      set('study.lowestTemperature', '15 F'),
    ],
    ['should fail piping/freezing/heatingFluid'],
  ],
  [
    'a separator with a boiler pump that moves more than the system',
    [
      { remove: 'L-supply' },
      { remove: 'L-return' },
      { insert: { id: 'HS9', kind: 'hydraulicSeparator', maximumPressure: '150 psi', volume: '2 gal' } },
      {
        insert: {
          id: 'C9',
          kind: 'circulator',
          serves: 'boiler',
          checkBuiltIn: 'yes',
          mode: 'constant-speed',
          hotWaterMode: 'full-speed',
          isolationFlanges: 'yes',
          maximumPressure: '145 psi',
          minimumSuction: '2 psi',
          curve: {
            complete: '2',
            list: [
              { id: 'none', flow: '0 gpm', head: '20 ft' },
              { id: 'most', flow: '20 gpm', head: '4 ft' },
            ],
          },
        },
      },
      ...[
        { id: 'L-supply', path: ['B1.supply', 'TE1', 'ISO1', 'C9', 'HS9.boilerSupply'] },
        { id: 'L-system', path: ['HS9.systemSupply', 'AS1', 'ISO4', 'C1', 'ISO5', 'HS.main'] },
        { id: 'L-system-return', path: ['HR.main', 'DS1', 'HS9.systemReturn'] },
        { id: 'L-return', path: ['HS9.boilerReturn', 'ISO2', 'B1.return'] },
      ].map((line) => ({
        insert: {
          ...line,
          medium: 'heatingWater',
          insulated: 'yes',
          exposure: 'heated',
          pipe: { type: 'copper-M', size: '1-1/4', length: '9 ft', equivalentLength: '12 ft' },
        },
      })),
      set('state heating.running', ['C1', 'C9']),
      set('state hot water.running', ['C1', 'C9']),
    ],
    ['should fail boiler/separator-return/B1'],
  ],
]
