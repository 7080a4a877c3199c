import { set, type Fault } from './fault.js'

/** Faults of the boiler itself, and of what it is filled with. */
export const boilerFaults: readonly Fault[] = [
  ['a boiler without a high limit', [set('B1.highLimits', '0')], ['must fail boiler/limits/B1']],
  ['a manual that demands a cutoff', [set('B1.lowWaterManual', 'cutoff-demanded')], ['must fail boiler/low-water/B1']],
  ['a boiler without a mark', [set('B1.listed', 'no')], ['should fail boiler/listed/B1']],
  ['an old relief valve on the new boiler', [set('RV1.work', 'kept')], ['advice fail relief/age/RV1']],
  ['a relief valve bushed down', [set('RV1.inletSize', '1/2')], ['should fail relief/tapping-size/RV1']],
  [
    'a boiler on a mountain, left as it came',
    [set('site.altitude', '5400 ft'), set('B1.altitudeSet', 'no'), set('B1.inputAtAltitude', '64800 Btu/h')],
    ['should fail boiler/altitude/B1'],
  ],
  [
    'a mountain higher than the manual goes',
    [set('site.altitude', '11000 ft'), set('B1.altitudeSet', 'yes'), set('B1.inputAtAltitude', '60000 Btu/h')],
    ['must fail boiler/altitude/B1'],
  ],
  ['sour heating water', [set('heatingFluid.pH', '6')], ['should fail water/accepted/B1']],
  ['a flue hotter than plastic bears', [set('B1.plasticVentLimit', '120 F')], ['must fail vent/flue-limit/VR1']],
]
