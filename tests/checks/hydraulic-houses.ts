import fc from 'fast-check'
import type { Written } from './asking.js'

/** Mostly told, so that a flow can be found; now and then a number is not. */
const told = (value: string, ...others: readonly string[]): fc.Arbitrary<string> =>
  fc.oneof(
    { weight: 9, arbitrary: fc.constantFrom(value, ...others) },
    { weight: 1, arbitrary: fc.constant('unknown') },
  )

const curve = fc.constant({
  complete: '3',
  list: [
    { id: 'none', flow: '0 gpm', head: '12 ft' },
    { id: 'half', flow: '6 gpm', head: '9 ft' },
    { id: 'most', flow: '12 gpm', head: '2 ft' },
  ],
})

const components = fc.tuple(
  fc.record({
    id: fc.constant('B1'),
    kind: fc.constant('boiler'),
    capped: fc.constant(['gas', 'flue', 'intake', 'condensate', 'relief']),
    resistance: fc.record({ flow: fc.constant('10 gpm'), head: told('7 ft', '12 ft') }),
  }),
  fc.record({
    id: fc.constant('C1'),
    kind: fc.constant('circulator'),
    checkBuiltIn: told('yes', 'no'),
    mode: told('constant-speed', 'constant-pressure'),
    hotWaterMode: fc.constant('full-speed'),
    setHead: told('5 ft'),
    curve,
  }),
  fc.record({ id: fc.constant('ZV1'), kind: fc.constant('zoneValve'), flowCoefficient: told('3 Cv', '9 Cv') }),
  fc.constant({ id: 'E1', kind: 'castIronRadiator', topElevation: '11 ft' }),
  fc.constant({ id: 'TE1', kind: 'tee' }),
  fc.constant({ id: 'TE2', kind: 'tee' }),
  fc.constant({ id: 'EX1', kind: 'expansionTank' }),
  fc.record({
    id: fc.constant('FV1'),
    kind: fc.constant('fillValve'),
    capped: fc.constant(['in']),
    setPressure: told('12 psi'),
  }),
)

const pipe = fc.record({ type: told('copper-M', 'steel'), size: told('1', '3/4'), equivalentLength: told('60 ft') })
const line = (id: string, path: readonly string[]): fc.Arbitrary<Written> =>
  fc.record({ id: fc.constant(id), medium: fc.constant('heatingWater'), path: fc.constant(path), pipe })

const lines = fc.tuple(
  line('L-supply', ['B1.supply', 'TE1', 'C1', 'ZV1', 'E1.in']),
  line('L-return', ['E1.out', 'B1.return']),
  line('L-tank', ['TE1.branch', 'TE2', 'EX1.system']),
  line('L-fill', ['FV1.out', 'TE2.branch']),
)

/** A boiler, a pump and one zone, drawn and counted with all that their flow asks for, or nearly all. */
export const hydraulicHouses: fc.Arbitrary<Written> = fc.record({
  installation: fc.constant('1'),
  components,
  lines,
  complete: fc.record({ all: told('13'), states: told('1') }),
  heatingFluid: fc.record({ antifreeze: told('no-antifreeze'), highestMean: told('140 F') }),
  zones: fc.tuple(fc.record({ id: fc.constant('Z1'), valve: told('ZV1'), designFlow: told('2 gpm') })),
  states: fc.tuple(
    fc.record({
      name: fc.constant('heating'),
      purpose: told('heating', 'hot-water'),
      open: fc.constantFrom(['ZV1'], ['ZV1'], [], ['unknown']),
      running: fc.constantFrom(['C1'], ['C1'], []),
      load: told('30000 Btu/h'),
    }),
  ),
})
