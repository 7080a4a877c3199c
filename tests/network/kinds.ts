import { choice, defineModel, kind, quantity, yesNo, type KindSpec } from '../../src/model/index.js'

// Kinds of the tests' own, so that the questions are tested apart from the kinds of the base rule set.
const twoWater = { a: 'heatingWater', b: 'heatingWater' } as const
const alongPorts = { between: ['a', 'b'], closes: 'never' } as const

export const testBoiler = kind('boiler', {
  spoken: 'boiler',
  place: 'boiler',
  ports: { supply: 'heatingWater', return: 'heatingWater', relief: 'heatingWater', condensate: 'condensate' },
  through: ['return', 'supply'],
  ways: [
    { between: ['supply', 'return'], closes: 'never' },
    { between: ['supply', 'relief'], closes: 'never' },
  ],
  fields: {},
})

const stopValve = kind('stopValve', {
  spoken: 'stop valve',
  place: 'boiler',
  ports: twoWater,
  through: ['a', 'b'],
  ways: [{ between: ['a', 'b'], closes: { unless: 'locked', is: 'open' } }],
  fields: { locked: choice({ open: 'locked open', no: 'not locked' }) },
})

const zoneValve = kind('zoneValve', {
  spoken: 'zone valve',
  place: 'boiler',
  ports: twoWater,
  through: ['a', 'b'],
  ways: [{ between: ['a', 'b'], closes: 'always' }],
  fields: {},
})

const checkValve = kind('checkValve', {
  spoken: 'check valve',
  place: 'boiler',
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never', checks: true }],
  fields: {},
})

const pump = kind('pump', {
  spoken: 'pump',
  place: 'boiler',
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never' }],
  fields: { checkBuiltIn: yesNo },
})

const strainer = kind('strainer', {
  spoken: 'strainer',
  place: 'boiler',
  ports: twoWater,
  through: ['a', 'b'],
  ways: [{ ...alongPorts, restricts: true }],
  fields: {},
})

const coupling = kind('coupling', {
  spoken: 'coupling',
  place: 'boiler',
  ports: { a: 'eitherWater', b: 'eitherWater' },
  through: ['a', 'b'],
  ways: [alongPorts],
  fields: {},
})

const tee = kind('tee', {
  spoken: 'tee',
  place: 'boiler',
  ports: { ...twoWater, branch: 'heatingWater' },
  through: ['a', 'b'],
  ways: [alongPorts, { between: ['a', 'branch'], closes: 'never' }, { between: ['b', 'branch'], closes: 'never' }],
  fields: {},
})

const header = kind('header', {
  spoken: 'header',
  place: 'boiler',
  ports: { main: 'heatingWater', 'branch*': 'heatingWater' },
  ways: [{ between: ['main', 'branch*'], closes: 'never' }],
  portsCountedBy: 'branches',
  fields: { branches: quantity('count') },
})

const manifold = kind('manifold', {
  spoken: 'manifold',
  place: 'boiler',
  ports: { 'branch*': 'heatingWater' },
  ways: [{ between: ['branch*', 'branch*'], closes: 'never' }],
  portsCountedBy: 'branches',
  fields: { branches: quantity('count') },
})

const relief = kind('relief', {
  spoken: 'relief valve',
  place: 'relief',
  ports: { inlet: 'eitherWater', outlet: 'discharge' },
  fields: {},
})

const service = kind('service', { spoken: 'service', place: 'fill', ports: { out: 'potableCold' }, fields: {} })

const potableTee = kind('potableTee', {
  spoken: 'tee for drinking water',
  place: 'fill',
  ports: { a: 'potableCold', b: 'potableHot', branch: 'potableCold' },
  through: ['a', 'b'],
  ways: [alongPorts, { between: ['a', 'branch'], closes: 'never' }],
  fields: {},
})

const backflow = kind('backflow', {
  spoken: 'backflow preventer',
  place: 'fill',
  ports: { in: 'potableCold', out: 'heatingWater' },
  ways: [{ between: ['in', 'out'], closes: 'never', checks: true }],
  fields: {},
})

const neutralizer = kind('neutralizer', {
  spoken: 'neutralizer',
  place: 'condensate',
  ports: { in: 'condensate', out: 'condensate' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never' }],
  fields: {},
})

const drain = kind('drain', {
  spoken: 'drain',
  place: 'condensate',
  ports: { in: 'condensate' },
  fields: { material: choice({ iron: 'cast iron', plastic: 'plastic' }) },
})

// Not a component, so no line can run to it, whatever ports it claims.
const zone = kind('zone', {
  spoken: 'zone',
  section: 'zones',
  place: 'boiler',
  ports: twoWater,
  through: ['a', 'b'],
  ways: [alongPorts],
  fields: {},
})

export const testLine = kind('line', {
  spoken: 'line',
  section: 'lines',
  place: 'boiler',
  fields: { type: choice({ copper: 'copper', plastic: 'plastic' }) },
})

export const componentKinds: readonly KindSpec[] = [
  testBoiler,
  stopValve,
  zoneValve,
  checkValve,
  pump,
  strainer,
  coupling,
  tee,
  header,
  manifold,
  relief,
  service,
  potableTee,
  backflow,
  neutralizer,
  drain,
]
export const testModel = defineModel([...componentKinds, zone, testLine])
