import { set, type Fault } from './fault.js'

export const electricalFaults: readonly Fault[] = [
  [
    'a 40 VA transformer: inside its plate, above the practice share',
    [set('TX1.rating', '40 VA')],
    ['should fail electrical/transformer-load/TX1'],
  ],
  ['a 30 VA transformer', [set('TX1.rating', '30 VA')], ['must fail electrical/transformer-load/TX1']],
  ['no alarm outside the bedrooms', [{ remove: 'CO3' }], ['should fail safety/co-alarm/hall-2']],
  ['a boiler on the circuit of the freezer', [set('B1.ownCircuit', 'no')], ['must fail electrical/own-circuit/B1']],
  ['no switch in sight', [set('B1.switchInSight', 'no')], ['must fail electrical/switch-in-sight/B1']],
  ['line and neutral swapped', [set('B1.polarity', 'reversed')], ['stop fail electrical/polarity/B1']],
  ['two control voltages joined', [set('B1.controlContact', 'powered')], ['must fail electrical/control-contact/B1']],
  ['a water test of 60 psi', [set('HT1.pressure', '60 psi')], ['must fail tests/heating-piping/HT1']],
  [
    'a gas test of 1 psi',
    [set('GT1.pressure', '1 psi')],
    ['should fail tests/gas-piping/GT1', 'should fail tests/gauge-range/GT1'],
  ],
  ['old radiators in the water test', [set('HT1.isolated', 'no')], ['stop fail tests/isolated/HT1']],
  [
    'air in plastic vent pipe',
    [{ insert: { id: 'VTEST', system: 'vent', testFluid: 'air' }, section: 'tests' }],
    ['stop fail tests/plastic-vent-air/VTEST'],
  ],
  ['no manual left', [set('B1.manualLeft', 'no')], ['must fail records/manual-left/B1']],
  ['no control diagram left', [set('B1.controlDiagramLeft', 'no')], ['must fail records/control-diagram/B1']],
  ['oil pipes left open', [set('fuel.oldOilPipes', 'open')], ['must fail records/oil-pipes/fuel']],
  [
    'old insulation cut untested',
    [set('building.oldInsulation', 'cut-untested')],
    ['stop fail records/old-insulation/building'],
  ],
]
