import type { Edit } from '../../src/model/index.js'
import { set, type Fault } from './fault.js'

const reading = (told: Readonly<Record<string, string>>): Edit => ({
  insert: { id: 'RD99', component: 'B1', at: '2025-10-21', instrumentCalibratedOn: '2025-03', ...told },
  section: 'readings',
})

/** 75,000 Btu/h ask for 18.75 in2 of each of two openings straight through the wall. */
const opening = (id: string, position: 'high' | 'low'): Edit => ({
  insert: {
    id,
    kind: 'combustionAirOpening',
    space: 'boiler-room',
    to: 'outdoors',
    way: 'direct',
    area: '15 in2',
    blocked: 'no',
    position,
  },
})

/** Faults of vents, chimneys and of the air that burners take. */
export const ventFaults: readonly Fault[] = [
  [
    'a terminal in an inside corner',
    [set('VT1.cornerDistance', '20 in')],
    ['should fail vent/termination-surroundings/VT1'],
  ],
  ['a terminal under a deck', [set('VT1.overhangDistance', '6 in')], ['should fail vent/termination-surroundings/VT1']],
  [
    'a terminal at the fence',
    [set('VT1.propertyLineDistance', '2 ft')],
    ['advice fail vent/termination-surroundings/VT1'],
  ],
  [
    'terminals closer than the maker asks',
    [set('VT1.intakeDistanceWanted', '18 in')],
    ['should fail vent/intake-distance/VT1'],
  ],
  ['a chimney without a cap', [set('CF1.topCover', 'missing')], ['should fail vent/chimney-cap/CF1']],
  [
    'an inlet listed as open, nobody counted',
    [set('CF1.openInlets', 'unknown'), set('CF1/of-the-heater.state', 'open')],
    ['must fail vent/abandoned-inlets/CF1'],
  ],
  [
    'a chimney in use that nobody looked through',
    [set('B1.chimney', 'CF1'), set('CF1.inspected', 'no')],
    ['should fail vent/chimney-inspected/CF1'],
  ],
  [
    'a boiler that breathes its own exhaust',
    [reading({ sample: 'intake-air', intakeOxygen: '20.3 %' })],
    ['should fail vent/recirculation/RD99'],
  ],
  [
    'a draft hood that spills',
    [reading({ sample: 'draft-hood', spillage: 'spills', draft: '-0.01 in wc' })],
    ['must fail vent/spillage/RD99'],
  ],
  [
    'a combustion air opening stuffed with rags',
    [{ insert: { id: 'CA9', kind: 'combustionAirOpening', space: 'boiler-room', blocked: 'yes' } }],
    ['must fail air/opening-blocked/CA9'],
  ],
  [
    'openings too small for the burner of a small room',
    [
      set('B1.use', 'unknown'),
      set('B1.sealedCombustion', 'no'),
      set('boiler-room.volume', '1386 ft3'),
      set('boiler-room.communicatingVolume', '1386 ft3'),
      opening('CA1', 'high'),
      opening('CA2', 'low'),
    ],
    [
      'advice undecided boiler/turndown/B1',
      'must undecided piping/minimum-flow/B1',
      'must undecided vent/exhaust-material/VR1',
      'must undecided vent/flue-limit/VR1',
      'must undecided vent/length/VR1',
      'must undecided vent/length/VR2',
      'should fail air/opening-size/boiler-room',
    ],
  ],
  [
    'a burner that takes its air from a small room',
    [
      set('B1.use', 'unknown'),
      set('B1.sealedCombustion', 'no'),
      set('boiler-room.volume', '1386 ft3'),
      set('boiler-room.communicatingVolume', '1386 ft3'),
    ],
    [
      'advice undecided boiler/turndown/B1',
      'must fail air/room-volume/boiler-room',
      'must undecided piping/minimum-flow/B1',
      'must undecided vent/exhaust-material/VR1',
      'must undecided vent/flue-limit/VR1',
      'must undecided vent/length/VR1',
      'must undecided vent/length/VR2',
    ],
  ],
]
