import fc from 'fast-check'
import { factsOf, type Written } from './asking.js'
import { hydraulicHouses } from './hydraulic-houses.js'

/** A value, or that nobody knows it. */
const value = <V>(...values: readonly V[]): fc.Arbitrary<V | 'unknown'> =>
  fc.constantFrom<V | 'unknown'>(...values, ...values, 'unknown')
const thing = (
  id: string,
  kind: string,
  fields: Readonly<Record<string, fc.Arbitrary<unknown>>> = {},
): fc.Arbitrary<Written> => fc.record({ id: fc.constant(id), kind: fc.constant(kind), ...fields })
const pressures = value('20 psi', '60 psi', '150 psi')
const part = { maximumPressure: pressures }
/** A part that is never the weakest. */
const strong = { maximumPressure: fc.constant('150 psi') }

const ventRow = (size: string): fc.Arbitrary<Written> =>
  fc.record({
    id: fc.constant(`row-${size}`),
    size: value(size),
    maximumLength: value('70 ft', '150 ft'),
    elbow90: value('5 ft', '0 ft'),
    elbow45: value('3 ft'),
  })
const bends = (id: string): fc.Arbitrary<Written> =>
  fc.record({ id: fc.constant(id), type: value('elbow90', 'elbow45'), count: value('0', '2', '7') })
const parts = (two: fc.Arbitrary<readonly Written[]>): fc.Arbitrary<unknown> =>
  fc.record({ complete: value('2'), list: two })

const boiler = thing('B1', 'boiler', {
  capped: fc.subarray(['supply', 'flue', 'intake']).map((ports) => ports.filter((port) => port !== 'supply')),
  ventTable: parts(fc.tuple(ventRow('2'), ventRow('3'))),
  fuel: value('natural-gas', 'oil'),
  trapBuiltIn: value('yes', 'no'),
  input: value('75000 Btu/h'),
  output: value('70000 Btu/h'),
  maximumSupply: value('180 F'),
  space: value('cellar'),
  sealedCombustion: value('yes', 'no'),
  reliefTapping: value('3/4'),
})

const components = fc.tuple(
  boiler,
  thing('RV1', 'reliefValve', {
    protects: value('B1'),
    setPressure: value('30 psi', '60 psi'),
    capacity: value('300000 Btu/h'),
  }),
  thing('RV2', 'reliefValve', {
    protects: value('B1', 'T1'),
    setPressure: value('15 psi', '150 psi'),
    capacity: value('100000 Btu/h'),
  }),
  thing('ISO1', 'isolationValve', { ...part, locked: value('open', 'no') }),
  thing('CV1', 'checkValve', part),
  thing('C1', 'circulator', { ...part, checkBuiltIn: value('yes', 'no'), serves: value('system', 'boiler') }),
  thing('TE1', 'tee', { ...part, capped: fc.constantFrom(['branch'], []) }),
  thing('E1', 'castIronRadiator', { ...part, work: value('kept', 'new'), topElevation: value('11 ft', '25.5 ft') }),
  thing('E2', 'finTube', { ...part, topElevation: value('0 ft', '19.5 ft') }),
  thing('FV1', 'fillValve', { capped: fc.constantFrom(['in'], ['in'], []) }),
  thing('EX1', 'expansionTank', strong),
  thing('AS1', 'airSeparator', strong),
  thing('ISO2', 'isolationValve', { ...strong, locked: value('open', 'no') }),
  thing('TE4', 'tee', strong),
  thing('AV1', 'airVent', { ...strong, type: value('automatic', 'manual') }),
  thing('PG1', 'pressureGauge', { ...strong, high: value('60 psi') }),
  thing('LW1', 'lowWaterCutoff', strong),
  thing('TE2', 'tee', strong),
  thing('TE3', 'tee', strong),
  thing('DS1', 'dirtSeparator', strong),
  thing('CT1', 'closelySpacedTees', { ...strong, size: value('1-1/4') }),
  thing('T1', 'indirectTank', { ...part, capped: fc.constantFrom(['relief'], ['hot', 'relief']) }),
  thing('WS1', 'waterService'),
  thing('WS2', 'waterService'),
  thing('BFP1', 'backflowPreventer'),
  thing('TE9', 'tee', part),
  thing('CA1', 'combustionAirOpening', {
    space: value('cellar', 'hall'),
    to: value('outdoors', 'indoors'),
    way: value('direct', 'horizontal'),
    position: value('high', 'low', 'between'),
    area: value('8 in2', '40 in2'),
    blocked: value('no', 'yes'),
  }),
  thing('CA2', 'combustionAirOpening', {
    space: value('cellar'),
    to: value('outdoors'),
    way: value('direct'),
    position: value('low', 'high'),
    grossArea: value('40 in2'),
    area: value('15 in2', '30 in2'),
    blocked: value('no'),
  }),
  thing('FV2', 'fillValve'),
  thing('PR1', 'pressureReducer', { setPressure: value('60 psi', '80 psi'), capped: fc.constant(['in', 'out']) }),
  thing('GM1', 'gasMeter'),
  thing('SV1', 'gasShutoff'),
  thing('ST1', 'sedimentTrap'),
  thing('GU1', 'gasUnion'),
  thing('GR1', 'gasRegulator'),
  thing('WH1', 'waterHeater', {
    capped: fc.constantFrom(['gas', 'vent'], []),
    fuel: value('oil'),
    space: value('cellar'),
    input: value('36000 Btu/h'),
    venting: value('draft-hood', 'direct'),
  }),
  thing('RV3', 'reliefValve', { protects: value('WH1'), type: value('pressure', 'temperature-and-pressure') }),
  thing('MV1', 'mixingValve'),
  thing('FO1', 'fixtureOutlet', { fixture: value('FX1') }),
  thing('PT2', 'potableTee'),
  thing('PS2', 'potableStop'),
  thing('WS3', 'waterService'),
  thing('PC1', 'potableCheck', { capped: fc.constantFrom([], ['in', 'out']) }),
  thing('PS1', 'potableStop'),
  thing('PT1', 'potableTee'),
  thing('EXP1', 'potableExpansionTank'),
  thing('TR1', 'condensateTrap'),
  thing('NE1', 'neutralizer'),
  thing('DR1', 'drainReceptor', { material: value('cast-iron', 'pvc') }),
  thing('VR1', 'ventRun', {
    appliance: value('B1'),
    size: value('2', '3', '4'),
    straightLength: value('38 ft'),
    fittings: parts(fc.tuple(bends('one'), bends('other'))),
  }),
  thing('VT1', 'ventTermination', { run: value('VR1') }),
  thing('TX1', 'transformer', { feeds: fc.subarray(['ZV1', 'ZV2', 'TH1', 'unknown']) }),
  thing('ZV1', 'zoneValve', {
    ...part,
    normally: value('open', 'closed'),
    power: value('7.68 VA'),
    voltage: value('24 V', '0 V'),
    wireLength: value('60 ft'),
    wireGauge: value('18'),
  }),
  thing('CF1', 'chimneyFlue', {
    openInlets: value('1'),
    inlets: parts(
      fc.tuple(
        fc.record({ id: fc.constant('one'), state: value('open') }),
        fc.record({ id: fc.constant('other'), state: value('sealed') }),
      ),
    ),
  }),
  thing('F1', 'radiantFloor', { ...part, topElevation: value('0 ft'), capped: fc.constant(['in', 'out']) }),
  thing('ZV2', 'zoneValve', { ...part, power: value('7.68 VA', '20 VA') }),
  thing('TH1', 'thermostat', { power: value('3 VA') }),
  thing('CO1', 'coAlarm', { space: value('hall', 'cellar'), interconnected: value('yes', 'no') }),
  thing('CO2', 'coAlarm', { space: value('hall'), interconnected: value('yes') }),
)

const path = (id: string, medium: string, items: fc.Arbitrary<readonly string[]>): fc.Arbitrary<Written> =>
  fc.record({
    id: fc.constant(id),
    medium: fc.constant(medium),
    path: items,
    exposure: fc.constantFrom('heated', 'heated', 'heated', 'heated', 'heated', 'heated', 'unknown', 'outdoors'),
    pipe: fc.record({ type: value('pvc', 'galvanized-steel', 'pex') }),
  })
const among = (start: string, middle: readonly string[], end: string): fc.Arbitrary<readonly string[]> =>
  fc.shuffledSubarray([...middle]).map((items) => [start, ...items, end])
/** Some of the middle on one line, the rest on another. */
const shared = (
  middle: readonly string[],
  ends: readonly [string, string, string, string],
): fc.Arbitrary<readonly [readonly string[], readonly string[]]> =>
  fc.subarray([...middle]).map((near) => [
    [ends[0], ...near, ends[1]],
    [ends[2], ...middle.filter((one) => !near.includes(one)), ends[3]],
  ])

const heating = shared(
  ['ISO1', 'CV1', 'C1', 'TE1', 'AS1', 'TE2'],
  ['B1.relief', 'RV1.inlet', 'B1.supply', 'E1.in'],
).chain(([relief, circuit]) =>
  fc.tuple(
    path('L-relief', 'heatingWater', fc.constant(relief)),
    path('L-circuit', 'heatingWater', fc.constant(circuit)),
    path(
      'L-return',
      'heatingWater',
      fc.constantFrom(['E1.out', 'TE9', 'ZV1', 'E2', 'DS1', 'B1.return'], ['E1.out', 'TE9', 'E2', 'B1.return']),
    ),
    path(
      'L-tank',
      'heatingWater',
      fc.constantFrom(['AS1.tank', 'TE3', 'EX1.system'], ['AS1.tank', 'TE3', 'ISO2', 'EX1.system']),
    ),
    path('L-vent', 'heatingWater', fc.constant(['AS1.vent', 'AV1.port'])),
    path(
      'L-gauge',
      'heatingWater',
      fc.constantFrom(['TE2.branch', 'TE4', 'PG1.port'], ['TE2.branch', 'unknown', 'PG1.port']),
    ),
    path('L-fill', 'heatingWater', fc.constantFrom(['FV1.out', 'TE3.branch'], ['unknown', 'TE3.branch'])),
    path('L-cutoff', 'heatingWater', fc.constantFrom(['TE4.branch', 'LW1.port'])),
  ),
)
const drinking = fc
  .constantFrom(['PC1', 'PS1'], ['PS1'])
  .chain((middle) => shared(middle, ['PT1.a', 'T1.cold', 'WS1.out', 'PT1.b']))
  .chain(([near, far]) =>
    fc.tuple(
      path('L-near', 'potableCold', fc.constant(near)),
      path('L-far', 'potableCold', fc.constant(far)),
      path('L-expansion', 'potableCold', fc.constant(['PT1.branch', 'EXP1.system'])),
    ),
  )
/** The device ahead of the fill valve, behind it, or left out. */
const filling = fc
  .constantFrom(
    [
      ['WS2.out', 'BFP1.in'],
      ['BFP1.out', 'FV2', 'TE9.branch'],
    ],
    [
      ['WS2.out', 'FV2', 'BFP1.in'],
      ['BFP1.out', 'TE9.branch'],
    ],
    [
      ['WS2.out', 'FV2.in'],
      ['FV2.out', 'TE9.branch'],
    ],
  )
  .chain(([feed = [], fill = []]) =>
    fc.tuple(path('L-feed', 'potableCold', fc.constant(feed)), path('L-makeup', 'heatingWater', fc.constant(fill))),
  )
const gas = fc.tuple(path('L-gas', 'gas', among('GM1.out', ['SV1', 'ST1', 'unknown', 'GU1', 'GR1'], 'B1.gas')))
/** A heater whose outlet takes mixed or bare hot water; its mixing valve has cold from its line or from another. */
const heater = fc
  .record({ mixed: fc.boolean(), sameLine: fc.boolean(), stop: fc.boolean() })
  .chain(({ mixed, sameLine, stop }) => {
    const hot = (id: string, items: readonly string[]): fc.Arbitrary<Written> =>
      path(id, 'potableHot', fc.constant(items))
    const cold = (id: string, items: readonly string[]): fc.Arbitrary<Written> =>
      path(id, 'potableCold', fc.constant(items))
    return fc.tuple(
      hot('L-hot', ['WH1.hot', mixed ? 'MV1.hot' : 'FO1.hot']),
      hot('L-mixed', ['MV1.mixed', mixed ? 'FO1.hot' : 'unknown']),
      hot('L-tp', ['WH1.relief', ...(stop ? ['PS2'] : []), 'RV3.inlet']),
      cold('L-heater', ['WS3.out', ...(sameLine ? ['PT2', 'WH1.cold'] : ['WH1.cold'])]),
      cold('L-mix', [sameLine ? 'PT2.branch' : 'PT2.a', 'MV1.cold']),
    )
  })
const condensate = fc.tuple(path('L-drain', 'condensate', among('B1.condensate', ['TR1', 'NE1', 'unknown'], 'DR1.in')))
const lines = fc.tuple(heating, drinking, filling, gas, heater, condensate).map((groups) => groups.flat())

const zone = (id: string, load: string): fc.Arbitrary<Written> =>
  fc.record({
    id: fc.constant(id),
    designLoad: value(load),
    priority: value('normal', 'shed-first'),
    use: value('heating', 'snow-melt'),
    emitters: fc.subarray(['E1', 'F1', 'unknown']),
  })
const counts = fc.record({
  all: value(true),
  states: value('2'),
  emitter: value('3'),
  boiler: value('1'),
  waterHeater: value('1'),
  reading: value('1'),
  reliefValve: value('3'),
  fixtureOutlet: value('1'),
  combustionAirOpening: value('2'),
  gasMeter: value('1'),
  fuelBurner: value('2'),
  coAlarm: value('2'),
  zone: value('2'),
})
const states = fc.tuple(
  fc.record({
    name: fc.constant('heating'),
    open: fc.subarray(['ZV1', 'unknown']),
    energized: fc.subarray(['ZV1', 'ZV2', 'unknown']),
  }),
  fc.record({ name: fc.constant('hot water'), energized: fc.subarray(['ZV1', 'ZV2']) }),
)
const fluid = fc.record({
  antifreeze: value('no-antifreeze', 'propylene-glycol', 'ethylene-glycol', 'unlisted'),
  concentration: value('0 %', '35 %', '70 %'),
  additives: fc.subarray(['inhibitor', 'unknown']),
})

const readings = fc.tuple(
  fc.record({
    id: fc.constant('RD1'),
    sample: value('draft-hood', 'flue-gas'),
    component: value('WH1'),
    at: value('2025-10-21'),
    instrumentCalibratedOn: value('2025-03-05', '2025-03'),
    oxygen: value('4.8 %', '0 %'),
    carbonDioxide: value('9.1 %'),
    carbonMonoxide: value('42 ppm', '0 ppm'),
  }),
)

const wholeHouses: fc.Arbitrary<Written> = fc
  .record({
    components,
    lines,
    counts,
    states,
    readings,
    zones: fc.tuple(zone('Z1', '15850 Btu/h'), zone('Z2', '3900 Btu/h')),
    heatingFluid: fluid,
    water: fc.record({ meterCheck: value('yes', 'no'), staticPressure: value('68 psi', '110 psi') }),
    fuel: fc.record({ heatingValue: value('1025 Btu/ft3') }),
  })
  .map(({ counts: { all, ...some }, ...house }) => ({
    ...house,
    installation: '1',
    spaces: [{ id: 'hall' }, { id: 'cellar' }],
    fixtures: [{ id: 'FX1' }],
    complete: {
      ...some,
      all:
        all === 'unknown'
          ? all
          : String(house.components.length + house.lines.length + house.readings.length + house.zones.length + 3),
    },
  }))
  .filter((house) => factsOf(house).contradictions.length === 0)

/** Houses in which much is known, drawn and counted, and some is not. Nothing contradicts itself. */
export const houses: fc.Arbitrary<Written> = fc.oneof(
  { weight: 3, arbitrary: wholeHouses },
  { weight: 1, arbitrary: hydraulicHouses },
)
