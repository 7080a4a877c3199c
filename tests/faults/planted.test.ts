import { describe, expect, it } from 'vitest'
import { checkInstallation } from '../../src/check-installation.js'
import { applyEdits, type Edit } from '../../src/model/index.js'
import { drinkingWaterFaults } from './drinking-water-faults.js'
import { set, type Fault } from './fault.js'
import { openEquipment, openSeed, openTowns } from '../houses/open-house.js'
import { boilerFaults } from './boiler-faults.js'
import { controlFaults } from './control-faults.js'
import { emitterFaults } from './emitter-faults.js'
import { ventFaults } from './vent-faults.js'
import { paperFaults } from './paper-faults.js'
import { set, type Fault } from './fault.js'
import { heatingFaults } from './heating-faults.js'
import { set, type PlantedFault } from './planted-fault.js'

const rulebook = openTowns('harrowmere')
const equipment = openEquipment()
const house = openSeed('larkspur-lane')

function told(edits: readonly Edit[]): readonly string[] {
  const edited = applyEdits(house, edits, rulebook.model)
  if (!edited.ok) throw new Error(edited.problems.map((problem) => problem.message).join(' '))
  const report = checkInstallation({ ...edited.document, installation: 1 }, rulebook, {
    equipment,
    judgedOn: '2025-11-01',
  })
  expect(report.contradictions).toEqual([])
  return report.findings.map(({ severity, verdict, key }) => `${severity} ${verdict} ${key}`)
}

/** A fault planted alone in the clean house, and everything that it makes the report say. Companions are listed. */
const faults: readonly Fault[] = [
  ...boilerFaults,
  ...controlFaults,
  ...emitterFaults,
  ...ventFaults,
  ...paperFaults,
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
  ['the coil on pipe too small', [set('L-coil.pipe.size', '3/4')], ['should fail piping/velocity/L-coil']],
  ['a zone throttled too far', [set('BV2.flowCoefficient', '1.2 Cv')], ['should fail piping/zone-flow/Z2']],
  [
    'a pump that asks for more pressure at its inlet',
    [set('C1.minimumSuction', '20 psi')],
    ['must fail expansion/pump-suction/C1'],
  ],
const faults: readonly PlantedFault[] = [
const faults: readonly Fault[] = [
  ...drinkingWaterFaults,
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
  ['two relief valves in one pipe', [set('RV1.discharge.shared', 'yes')], ['must fail relief/discharge-own-line/RV1']],
  [
    'a fill of 12 psi',
    [set('FV1.setPressure', '12 psi')],
    ['must fail fill/pressure-for-height/FV1', 'should fail expansion/charge-matches-fill/EX1'],
  ],
  [
    'a fill that reaches the top without margin',
    [set('FV1.setPressure', '13 psi')],
    ['should fail expansion/charge-matches-fill/EX1', 'should fail fill/pressure-for-height/FV1'],
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
    'no potable expansion tank behind the meter check',
    [{ remove: 'EXP2' }, set('PT3.capped', ['branch'])],
    ['must fail hot-water/closed-system/T1'],
  ],
  ['a tap at 135 F', [set('FX-tub.hotWater', '135 F')], ['stop fail hot-water/outlet-limit/FX-tub']],
  ['a shower at 125 F', [set('FX-shower.hotWater', '125 F')], ['must fail hot-water/outlet-limit/FX-shower']],
  ['a lavatory at 125 F', [set('FX-lavatory.hotWater', '125 F')], ['should fail hot-water/outlet-limit/FX-lavatory']],
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
  ['a T&P valve on the boiler', [set('RV1.type', 'temperature-and-pressure')], ['stop fail relief/boiler-type/RV1']],
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
  ['cellular-core exhaust pipe', [set('VR1.material', 'pvc-cellular')], ['must fail vent/exhaust-material/VR1']],
  ['four more elbows, which the maker allows', [set('VR1/quarter-bends.count', '7')], []],
  ['six more elbows', [set('VR1/quarter-bends.count', '9')], ['must fail vent/length/VR1']],
  ['a terminal at 28 in', [set('VT1.heightAboveGrade', '28 in')], ['must fail vent/termination-height/VT1']],
  ['no neutralizer before the iron drain', [{ remove: 'NE1' }], ['must fail condensate/neutralizer/B1']],
  [
    'an old galvanized drip line before the neutralizer',
    [set('L-condensate.pipe.type', 'galvanized-steel')],
    ['must fail condensate/metal-ahead/B1'],
  ],
  [
    'a 40 VA transformer: inside its plate, above the practice share',
    [set('TX1.rating', '40 VA')],
    ['should fail electrical/transformer-load/TX1'],
  ],
  ['a 30 VA transformer', [set('TX1.rating', '30 VA')], ['must fail electrical/transformer-load/TX1']],
  ['no alarm outside the bedrooms', [{ remove: 'CO3' }], ['should fail safety/co-alarm/hall-2']],
  [
    'a small heater left alone on the old chimney',
    [
      set('CF1.area', '72.6 in2'),
      {
        insert: {
          id: 'WH1',
          kind: 'waterHeater',
          fuel: 'natural-gas',
          venting: 'draft-hood',
          draftHoodArea: '7.07 in2',
          flue: 'CF1',
          input: '20000 Btu/h',
          aboveFinishedSpace: 'no',
          temperatureRelief: 'in-tapping',
          capped: ['cold', 'hot'],
          space: 'boiler-room',
        },
      },
      set('boiler-room.volume', '2400 ft3'),
      set('CF1.inspected', 'yes'),
    ],
    [
      'must fail vent/orphaned-heater/WH1',
      'must undecided gas/pipe-capacity/WH1',
      'must undecided hot-water/potable-tank-size/EXP2',
      'should fail vent/draft-tested/WH1',
    ],
  ],
  ['a condensate trap filled by nobody', [set('TR1.filled', 'no')], ['stop fail condensate/trap-filled/TR1']],
  ['condensate piped tight into the drain', [set('DR1.airBreak', 'no')], ['should fail condensate/air-break/DR1']],
  [
    'a condensate pump that only sounds a buzzer',
    [{ insert: { id: 'CP9', kind: 'condensatePump', overflowStops: 'alarm-only' }, in: 'L-condensate', after: 'NE1' }],
    ['must fail condensate/pump-stops-burner/CP9'],
  ],
  [
    'a condensate line that ends outdoors',
    [set('L-condensate.exposure', 'outdoors'), set('L-condensate.freezeProtected', 'no')],
    ['should fail condensate/freezing/L-condensate'],
  ],
  [
    'a neutralizer too small for the boiler',
    [set('NE1.ratedInput', '60000 Btu/h')],
    ['should fail condensate/neutralizer-size/NE1'],
  ],
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
  [
    'a tank kept lukewarm',
    [set('T1.storedTemperature', '115 F')],
    ['advice undecided hot-water/first-hour/T1', 'should fail hot-water/storage-temperature/T1'],
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
  [
    'a charge read with water on the tank',
    [set('EX1.prechargeWaterSideEmpty', 'no')],
    ['should fail expansion/precharge/EX1'],
  ],
  ['a large tank hanging on its pipe', [set('EX1.support', 'pipe')], ['should fail expansion/support/EX1']],
  ['an exhaust that falls outward', [set('VR1.slope', '-0.1 in/ft')], ['must fail vent/slope/VR1']],
  ['hangers 8 ft apart', [set('VR1.supportSpacing', '8 ft')], ['should fail vent/support/VR1']],
  ['two vent systems in one run', [set('VR1.oneSystem', 'no')], ['must fail vent/one-system/VR1']],
  ['an intake from the laundry', [set('VR2.opensTo', 'fouled-space')], ['must fail vent/intake-air/VR2']],
  [
    'a terminal beside a window',
    [set('VT1/window-east.distance', '9 in')],
    ['must fail vent/opening-distance/VT1/window-east'],
  ],
  ['exhaust and intake 7 in apart', [set('VT1.intakeDistance', '7 in')], ['should fail vent/intake-distance/VT1']],
  [
    'a terminal beside the gas regulator',
    [set('VT1.regulatorDistance', '24 in')],
    ['must fail vent/regulator-distance/VT1'],
  ],
  ['a terminal over the public walk', [set('VT1.overPublicWalk', 'yes')], ['must fail vent/public-walk/VT1']],
  ['an open inlet in the old chimney', [set('CF1.openInlets', '1')], ['must fail vent/abandoned-inlets/CF1']],
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
  ['no sediment trap', [set('B1.gasSedimentTrap', 'no')], ['must fail gas/sediment-trap/B1']],
  ['a gas shutoff 9 ft away', [set('B1.gasShutoffDistance', '9 ft')], ['must fail gas/shutoff-distance/B1']],
  ['no union at the gas connection', [set('B1.gasUnion', 'no')], ['should fail gas/union/B1']],
  [
    'a gas connector too long and through a wall',
    [{ insert: { id: 'GC1', kind: 'gasConnector', appliance: 'B1', length: '8 ft', throughWall: 'yes' } }],
    ['must fail gas/connector-length/GC1', 'must fail gas/connector-wall/GC1'],
  ],
  [
    'corrugated gas tubing without a bond',
    [set('G2.pipe.type', 'csst'), set('G2.bonded', 'no')],
    ['must fail gas/bond/G2', 'must undecided gas/pipe-capacity/B1', 'must undecided gas/pressure-at-appliance/B1'],
  ],
  [
    'gas pressure above the nameplate',
    [set('B1.inletPressureStatic', '15 in wc')],
    ['stop fail gas/inlet-pressure/B1'],
  ],
  [
    'gas pressure below the nameplate with all on',
    [set('B1.inletPressureAllOn', '3 in wc')],
    ['must fail gas/inlet-pressure/B1'],
  ],
  [
    'propane without a kit',
    [set('fuel.type', 'propane'), set('B1.gasConversion', 'missing')],
    ['stop fail gas/conversion/B1'],
  ],
  ['a boiler on the circuit of the freezer', [set('B1.ownCircuit', 'no')], ['must fail electrical/own-circuit/B1']],
  ['no switch in sight', [set('B1.switchInSight', 'no')], ['must fail electrical/switch-in-sight/B1']],
  ['line and neutral swapped', [set('B1.polarity', 'reversed')], ['stop fail electrical/polarity/B1']],
  ['two control voltages joined', [set('B1.controlContact', 'powered')], ['must fail electrical/control-contact/B1']],
  ['no low-water protection', [set('B1.lowWaterProtection', 'missing')], ['must fail boiler/low-water/B1']],
  ['a high limit that nobody proved', [set('B1.highLimitProved', 'no')], ['must fail boiler/high-limit/B1']],
  ['a boiler too close to wood', [set('B1.clearance', '1 in')], ['must fail boiler/clearance/B1']],
  ['no room to work', [set('B1.serviceDepth', '20 in')], ['should fail boiler/service-space/B1']],
  ['outdoor reset switched off', [set('B1.outdoorReset', 'disabled')], ['should fail boiler/outdoor-reset/B1']],
  ['raised carbon monoxide', [set('RD1.carbonMonoxide', '180 ppm')], ['must fail start-up/carbon-monoxide/RD1']],
  ['dangerous carbon monoxide', [set('RD1.carbonMonoxide', '600 ppm')], ['stop fail start-up/carbon-monoxide/RD1']],
  [
    'a slip that contradicts itself',
    [set('RD1.carbonDioxide', '10.6 %')],
    ['should fail start-up/slip-consistent/RD1'],
  ],
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
  ['a radiator in a cabinet', [set('E2.coverFactor', '90 %')], ['should fail emitters/output/E2']],
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
  ['hard water', [set('water.hardness', 'hard')], ['advice fail water/hardness/water']],
  [
    'a new bare main',
    [set('L-supply.pipe.size', '2'), set('L-supply.insulated', 'no')],
    ['advice fail piping/main-insulation/L-supply'],
  ],
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
    ['should fail expansion/pump-away/EX1'],
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
    ['should fail air/air-separator-place/AS9'],
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
    ['should fail hot-water/zones-closed-on-priority/state hot water and zone 2'],
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
    ['should fail piping/tee-spacing/CT9'],
  ],
  ['a pump without flanges', [set('C1.isolationFlanges', 'no')], ['advice fail piping/pump-service/C1']],
  ...heatingFaults,
]

describe('faults planted alone in the clean house', () => {
  it.each(faults)('%s', (_name, edits, expected) => {
    const before = told([])
    expect(
      told(edits)
        .filter((line) => !before.includes(line))
        .sort(),
    ).toEqual([...expected].sort())
  })

  it('between them fire every rule that the package ships', () => {
    const fired = new Set(
      faults.flatMap(([, , lines]) =>
        lines
          .filter((line) => line.includes(' fail '))
          .map((line) => line.split(' ')[2]?.split('/').slice(0, 2).join('/')),
      ),
    )
    const shipped = rulebook.rules.filter((rule) => rule.demands.length > 0).map((rule) => rule.id)
    // The clean house itself has a burner that cannot turn down to its smallest zone.
    expect(shipped.filter((id) => !fired.has(id))).toEqual(['boiler/turndown'])
    expect(told([])).toContain('advice fail boiler/turndown/B1')
  })
})
