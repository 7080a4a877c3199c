import {
  airCushionTank,
  diaphragmTank,
  fillPressure,
  fluidExpansion,
  netExpansion,
} from '../../src/sizing/expansion/index.js'
import { waterDensity } from '../../src/sizing/index.js'
import { si } from '../../src/units/index.js'
import { numberOf } from '../sizing/number-of.js'
import type { Adapter, CheckRecord } from './adapter.js'
import { inputOf } from './input-of.js'

const gallon = si('volume', '1 gal')
const psi = si('pressure', '1 psi')
const foot = si('length', '1 ft')

/** A key is the longest beginning of an id that an adapter answers for. */
export const adapters: Readonly<Record<string, Adapter>> = {
  'x-ashrae-d': (record) => numberOf(diaphragmTank(handbookTank(record))) / gallon,
  'x-ashrae-c': (record) => numberOf(airCushionTank(handbookTank(record))) / gallon,
  'x-e-': (record) => water(inputOf(record, 't_fill_degC') + 273.15, inputOf(record, 't_max_degC') + 273.15),
  'x-e-10-93': (record) => water(inputOf(record, 't1_degC') + 273.15, inputOf(record, 't2_degC') + 273.15),
  'x-small': (record) => {
    const atmosphere = inputOf(record, 'pa_psia') * psi
    const swelling = water(fahrenheit(inputOf(record, 't1_degF')), fahrenheit(inputOf(record, 't2_degF')))
    const pressures = { fill: inputOf(record, 'p1_psig') * psi, highest: inputOf(record, 'p2_psig') * psi, atmosphere }
    return numberOf(diaphragmTank({ expansion: inputOf(record, 'Vs_gal') * gallon * swelling, ...pressures })) / gallon
  },
  // The record counts 0.4335 psi for a foot, which is water at 60 F.
  'x-fill': (record) => {
    const column = { height: inputOf(record, 'h_ft') * foot, density: waterDensity(fahrenheit(60)).value }
    return numberOf(fillPressure({ ...column, margin: inputOf(record, 'margin_psi') * psi })) / psi
  },
}

function handbookTank(record: CheckRecord): Parameters<typeof diaphragmTank>[0] {
  const swelling = inputOf(record, 'v2_ft3_lb') / inputOf(record, 'v1_ft3_lb') - 1
  const growth = { pipe: inputOf(record, 'alpha_per_F') * 1.8, rise: inputOf(record, 'dt_F') / 1.8 }
  const atmosphere = inputOf(record, 'pa_psia') * psi
  return {
    expansion: inputOf(record, 'Vs_gal') * gallon * numberOf(netExpansion({ swelling, ...growth })),
    fill: inputOf(record, 'p1_psia') * psi - atmosphere,
    highest: inputOf(record, 'p2_psia') * psi - atmosphere,
    atmosphere,
  }
}

function water(cold: number, hot: number): number {
  return numberOf(fluidExpansion({ fluid: 'water', cold, hot }))
}

function fahrenheit(degrees: number): number {
  return si('temperature', `${degrees} F`)
}
