import type { Edit } from '../../src/model/index.js'
import { set, type Fault } from './fault.js'

const floor = (wrong: Readonly<Record<string, string>>): Edit => ({
  insert: {
    id: 'F9',
    kind: 'radiantFloor',
    topElevation: '0 ft',
    maximumPressure: '100 psi',
    highestWater: '120 F',
    limitFitted: 'yes',
    rampLimited: 'yes',
    space: 'family',
    waterVolume: '0 gal',
    roomLoad: '0 Btu/h',
    coverFactor: '100 %',
    ratedOutput: '4000 Btu/h',
    ratedDifference: '40 F',
    exponent: '1.1',
    area: '200 ft2',
    capped: ['in', 'out'],
    ...wrong,
  },
})
const loop = (use: string): Edit => ({
  insert: {
    id: 'Z9',
    use,
    designLoad: '20000 Btu/h',
    priority: 'shed-first',
    emitters: ['F9'],
    designSupply: '110 F',
    designDifference: '20 F',
  },
  section: 'zones',
})
const normal = ['Z1', 'Z2', 'Z3', 'Z4'].map((id) => set(`${id}.priority`, 'normal'))

/** Faults of emitters and of the load that they make. */
export const emitterFaults: readonly Fault[] = [
  [
    'a radiator in a cabinet',
    [set('E2.coverFactor', '80 %')],
    ['must fail emitters/output/E2', 'should fail emitters/cover/E2'],
  ],
  [
    'a floor on boiler water',
    [loop('heating'), floor({ limitFitted: 'no' }), set('B1.maximumSupply', '180 F')],
    [
      'must fail emitters/floor-limit/F9',
      'should undecided piping/zone-flow/Z1',
      'should undecided piping/zone-flow/Z2',
      'should undecided piping/zone-flow/Z3',
      'should undecided piping/zone-flow/Z4',
      'should undecided piping/zone-flow/Z9',
    ],
  ],
  [
    'a slab in the snow that is warmed at once',
    [loop('snow-melt'), floor({ rampLimited: 'no' })],
    [
      'advice fail emitters/snow-ramp/F9',
      'should undecided piping/zone-flow/Z1',
      'should undecided piping/zone-flow/Z2',
      'should undecided piping/zone-flow/Z3',
      'should undecided piping/zone-flow/Z4',
      'should undecided piping/zone-flow/Z9',
    ],
  ],
  [
    'more heat asked for than there is, the rest dropped first',
    [...normal, set('Z1.designLoad', '60000 Btu/h'), set('Z1.priority', 'shed-first')],
    ['advice fail boiler/concurrent-load/installation'],
  ],
  [
    'more heat asked for than there is',
    [...normal, set('Z1.designLoad', '60000 Btu/h')],
    ['must fail boiler/concurrent-load/installation'],
  ],
  [
    'a zone valve at the end of a long wire',
    [set('ZV2.wireLength', '300 ft')],
    ['advice fail electrical/wire-drop/ZV2'],
  ],
  [
    'a large potable tank hanging on its pipe',
    [set('EXP2.volume', '20 gal'), set('EXP2.support', 'pipe')],
    ['should fail expansion/potable-support/EXP2'],
  ],
]
