import { set, type Fault } from './fault.js'

/** Faults of readings, tests and papers. */
export const paperFaults: readonly Fault[] = [
  [
    'an analyzer calibrated two years ago',
    [set('RD1.instrumentCalibratedOn', '2023-09')],
    ['should fail start-up/calibration/RD1'],
  ],
  [
    'glycol read on the wrong scale, and weak',
    [
      set('heatingFluid.antifreeze', 'propylene-glycol'),
      set('heatingFluid.concentration', '35 %'),
      set('heatingFluid.foodGradeLabel', 'yes'),
      {
        insert: { id: 'RD98', sample: 'refractometer', glycolStrength: '25 %', glycolScale: 'ethylene-glycol' },
        section: 'readings',
      },
    ],
    [
      'must fail expansion/tank-size/EX1',
      'must fail start-up/antifreeze-strength/RD98',
      'should fail fill/open-on-glycol/FV1',
    ],
  ],
  ['a test without a photo of its end', [set('GT1.endSeen', 'no')], ['should fail tests/photos/GT1']],
  ['a gas test on a gauge to 100 psi', [set('GT1.gaugeHigh', '100 psi')], ['should fail tests/gauge-range/GT1']],
  [
    'a house that is not built as drawn',
    [set('jurisdiction.drawings', 'changed')],
    ['should fail records/permit-delta/jurisdiction'],
  ],
  ['no record of the start-up', [set('B1.startUpRecordLeft', 'no')], ['should fail records/start-up-record/B1']],
  ['no tag with the settings', [set('B1.settingsTagLeft', 'no')], ['should fail records/settings-tag/B1']],
]
