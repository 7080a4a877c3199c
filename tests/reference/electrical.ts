import { classTwoLimit, wireDrop, wireResistance } from '../../src/sizing/electrical/index.js'
import { transformerLoad } from '../../src/sizing/index.js'
import { listedWireResistance } from '../../src/tables/index.js'
import { si } from '../../src/units/index.js'
import { numberOf } from '../sizing/number-of.js'
import type { Adapter } from './adapter.js'
import { inputOf } from './input-of.js'

const thousandFeet = si('length', '1000 ft')

/** A key is the longest beginning of an id that an adapter answers for. */
export const adapters: Readonly<Record<string, Adapter>> = {
  'el-r-': (record) => (listedWireResistance(inputOf(record, 'awg')) ?? NaN) * thousandFeet,
  'el-rc-': (record) => {
    const wire = { gauge: inputOf(record, 'awg'), temperature: si('temperature', '75 C'), stranded: true }
    return numberOf(wireResistance(wire)) * thousandFeet
  },
  'el-r20-': (record) => {
    const wire = { gauge: inputOf(record, 'awg'), temperature: si('temperature', '20 C'), stranded: false }
    return numberOf(wireResistance(wire)) * thousandFeet
  },
  'el-drop': (record) => {
    const circuit = { resistance: inputOf(record, 'R_ohm_kft') / thousandFeet, current: inputOf(record, 'I_A') }
    return numberOf(wireDrop({ ...circuit, length: inputOf(record, 'L_ft') * (thousandFeet / 1000) }))
  },
  'el-va': (record) => {
    const several = (name: string, count: number, power: number): { id: string; power: number }[] =>
      Array.from({ length: count }, (_, at) => ({ id: `${name}${at}`, power }))
    const valves = several('valve', inputOf(record, 'valves'), inputOf(record, 'VA_each'))
    const thermostats = several('thermostat', inputOf(record, 'thermostats'), inputOf(record, 'VA_th'))
    const relay = { id: 'relay', power: inputOf(record, 'relay_VA') }
    const states = [{ name: 'all', energized: valves.map(({ id }) => id) }]
    return transformerLoad({ steady: [...thermostats, relay], switched: valves, states }).value
  },
  'el-class2': (record) => numberOf(classTwoLimit(inputOf(record, 'V_volt'))),
}
