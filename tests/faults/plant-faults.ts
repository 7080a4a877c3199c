import { set, type Fault } from './fault.js'

export const plantFaults: readonly Fault[] = [
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
  [
    'a relief valve set above the nameplate',
    [set('RV1.setPressure', '60 psi')],
    ['should fail boiler/gauge-range/PG1', 'stop fail relief/setting/B1'],
  ],
  ['a radiator weaker than the relief setting', [set('E4.maximumPressure', '25 psi')], ['must fail relief/setting/B1']],
  ['a relief valve too small for the boiler', [set('RV1.capacity', '60000 Btu/h')], ['stop fail relief/capacity/B1']],
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
  [
    'a T&P valve that opens too hot',
    [set('RV2.temperatureRating', '240 F')],
    ['must fail relief/temperature-limits/RV2'],
  ],
  ['two relief valves in one pipe', [set('RV1.discharge.shared', 'yes')], ['must fail relief/discharge-own-line/RV1']],
  ['four more elbows, which the maker allows', [set('VR1/quarter-bends.count', '7')], []],
  [
    'a charge read with water on the tank',
    [set('EX1.prechargeWaterSideEmpty', 'no')],
    ['must undecided expansion/charge-matches-fill/EX1'],
  ],
  ['a large tank hanging on its pipe', [set('EX1.support', 'pipe')], ['should fail expansion/support/EX1']],
  [
    'an open boiler in a bedroom closet',
    [
      set('B1.use', 'unknown'),
      set('B1.sealedCombustion', 'no'),
      set('boiler-room.use', 'bedroom'),
      set('boiler-room.volume', '4000 ft3'),
    ],
    [
      'advice undecided boiler/turndown/B1',
      'should fail air/bedroom/B1',
      'must undecided piping/minimum-flow/B1',
      'must undecided vent/exhaust-material/VR1',
      'must undecided vent/flue-limit/VR1',
      'must undecided vent/length/VR1',
      'must undecided vent/length/VR2',
    ],
  ],
  ['no low-water protection', [set('B1.lowWaterProtection', 'missing')], ['must fail boiler/low-water/B1']],
  ['a high limit that nobody proved', [set('B1.highLimitProved', 'no')], ['must fail boiler/high-limit/B1']],
  ['a boiler too close to wood', [set('B1.clearance', '1 in')], ['must fail boiler/clearance/B1']],
  ['no room to work', [set('B1.serviceDepth', '20 in')], ['should fail boiler/service-space/B1']],
  ['outdoor reset switched off', [set('B1.outdoorReset', 'disabled')], ['should fail boiler/outdoor-reset/B1']],
  [
    'a boiler twice the load',
    [set('B1.use', 'unknown'), set('B1.output', '112000 Btu/h')],
    [
      'advice undecided boiler/turndown/B1',
      'must undecided air/room-volume/boiler-room',
      'must undecided piping/minimum-flow/B1',
      'must undecided vent/exhaust-material/VR1',
      'must undecided vent/flue-limit/VR1',
      'must undecided vent/length/VR1',
      'must undecided vent/length/VR2',
      'should fail boiler/size/installation',
    ],
  ],
]
