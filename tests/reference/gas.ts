import {
  clockedInput,
  gasCapacity,
  gasCapacityHigh,
  gravityMultiplier,
  spitzglassCapacity,
  tableCapacity,
  tableSize,
} from '../../src/sizing/gas/index.js'
import { gasFlow, gasTable, type GasTableName, type PipedGas } from '../../src/tables/index.js'
import { si } from '../../src/units/index.js'
import { numberOf } from '../sizing/number-of.js'
import type { Adapter, CheckRecord } from './adapter.js'
import { inputOf } from './input-of.js'

const cfh = si('volumeFlow', '1 cfh')
const foot = si('length', '1 ft')
const inch = si('length', '1 in')
const inchOfWater = si('pressure', '1 in wc')
const psi = si('pressure', '1 psi')
const heatPerCubicFoot = si('energyPerVolume', '1 Btu/ft3')
const cubicFoot = cfh * 3600

/** A key is the longest beginning of an id that an adapter answers for. */
export const adapters: Readonly<Record<string, Adapter>> = {
  'g-3wc-': (record) => low(record, 'natural-gas') / cfh,
  'g-05wc-': (record) => low(record, 'natural-gas') / cfh,
  'g-6wc-': (record) => low(record, 'natural-gas') / cfh,
  'g-pe-': (record) => low(record, 'natural-gas') / cfh,
  'g-cupr-': (record) => (low(record, 'propane') / cfh) * (inputOf(record, 'HV_Btu_ft3') / 1000),
  // The table at 17 in wc wants the compressible form with 2 psi at the inlet; the low form is 5 % off.
  'g-cung-': high,
  'g-cuhp-': high,
  'g-csstp-': (record) => tabled(record, 'csst-propane-half-inch') / si('heatRate', '1 MBH'),
  // Two recollections of the same table; at EHD 37 they differ by 3 % (409 here, 397 there, at 25 ft).
  'g-cssng-': (record) => tabled(record, 'csst-natural-gas-half-inch') / cfh,
  'g-sg-': (record) => numberOf(gravityMultiplier({ table: 0.6, gas: inputOf(record, 'SG') })),
  // Any heating value does: the load is told in cubic feet. The size is in nominal inches.
  'g-ex-': (record) => {
    const heatingValue = 1000 * heatPerCubicFoot
    const load = inputOf(record, 'load_cfh') * cfh * heatingValue
    const table = gasTable('steel-natural-gas-half-inch')
    return numberOf(tableSize({ table, load, heatingValue, length: inputOf(record, 'longest_ft') * foot }))
  },
  'g-spitz-': (record) => {
    const drop = inputOf(record, 'dH_inwc') * inchOfWater
    return numberOf(spitzglassCapacity({ ...pipeOf(record), drop, specificGravity: inputOf(record, 'SG') })) / cfh
  },
  'g-clock': (record) => {
    const volume = inputOf(record, 'dial_ft3') * cubicFoot
    const heatingValue = inputOf(record, 'HV_Btu_ft3') * heatPerCubicFoot
    return numberOf(clockedInput({ volume, time: inputOf(record, 't_s'), heatingValue })) / si('heatRate', '1 Btu/h')
  },
}

function pipeOf(record: CheckRecord): { readonly insideDiameter: number; readonly length: number } {
  return { insideDiameter: inputOf(record, 'id_in') * inch, length: inputOf(record, 'L_ft') * foot }
}

function low(record: CheckRecord, gas: PipedGas): number {
  const drop = inputOf(record, 'dH_inwc') * inchOfWater
  return numberOf(gasCapacity({ ...pipeOf(record), drop, gas: gasFlow(gas) }))
}

function high(record: CheckRecord): number {
  const atmosphere = 14.7 * psi
  const inlet = inputOf(record, 'p1_psia') * psi - atmosphere
  const drop = inputOf(record, 'dp_psi') * psi
  return numberOf(gasCapacityHigh({ ...pipeOf(record), inlet, drop, atmosphere, gas: gasFlow('natural-gas') })) / cfh
}

function tabled(record: CheckRecord, name: GasTableName): number {
  const length = inputOf(record, 'L_ft') * foot
  return numberOf(tableCapacity({ table: gasTable(name), size: inputOf(record, 'EHD'), length }))
}
