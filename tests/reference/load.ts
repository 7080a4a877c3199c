import {
  airChangeConductance,
  billLoad,
  conductanceOfLayers,
  energySignature,
  type EnergySignature,
  fuelOfYear,
  loadFromMean,
  monthDegreeDays,
  outputAtRatio,
  roomLoad,
} from '../../src/sizing/load/index.js'
import { normalDegreeDays, type OldWall, outdoorDesigns, wallConductance } from '../../src/tables/index.js'
import { si } from '../../src/units/index.js'
import { numberOf } from '../sizing/number-of.js'
import type { Adapter, CheckRecord } from './adapter.js'
import { inputOf, numbersOf, textOf } from './input-of.js'

const btuPerHour = si('heatRate', '1 Btu/h')
/** The records count 100,000 Btu to a therm. */
const therm = 1e5 * btuPerHour * 3600
/** 0.34 Wh/m3 K of EN 12831, which the records use; J/m3 K. */
const roundAir = 0.34 * 3600

/** A key is the longest beginning of an id that an adapter answers for. */
export const adapters: Readonly<Record<string, Adapter>> = {
  'l-gba': (record) =>
    numberOf(
      loadFromMean({
        meanLoad: inputOf(record, 'mean_load_Btu_h') * btuPerHour,
        meanOutdoor: fahrenheit(inputOf(record, 't_mean_degF')),
        balance: fahrenheit(inputOf(record, 't_base_degF')),
        designOutdoor: fahrenheit(inputOf(record, 't_design_degF')),
      }),
    ) / btuPerHour,
  'l-gba-14': (record) =>
    numberOf(outputAtRatio({ load: inputOf(record, 'load_Btu_h'), ratio: inputOf(record, 'factor') })),
  'l-bill': (record) =>
    numberOf(
      billLoad({
        energy: inputOf(record, 'therms') * therm,
        otherEnergy: inputOf(record, 'other_therms') * therm,
        efficiency: inputOf(record, 'eta'),
        degreeDays: inputOf(record, 'HDD65') / 1.8,
        balance: fahrenheit(65),
        designOutdoor: fahrenheit(inputOf(record, 't_design_degF')),
      }),
    ) / btuPerHour,
  'l-fuel': (record) =>
    numberOf(
      fuelOfYear({
        designLoad: inputOf(record, 'q_design_Btu_h') * btuPerHour,
        difference: inputOf(record, 'dT_design_F') / 1.8,
        degreeDays: inputOf(record, 'HDD65') / 1.8,
        efficiency: inputOf(record, 'eta'),
        correction: inputOf(record, 'C_D'),
      }),
    ) / therm,
  'l-vent-si': (record) => {
    const air = { volume: inputOf(record, 'V_m3'), airChange: inputOf(record, 'n_1_h') / 3600 }
    return numberOf(airChangeConductance({ ...air, airHeatCapacity: roundAir })) * inputOf(record, 'dT_K')
  },
  'l-ex-tot': wholeHouse,
  'l-rdsap-sb-': (record) => wall(record, 'solid-brick'),
  'l-rdsap-cav-': (record) => wall(record, 'cavity'),
  'l-r': (record) => {
    const perFoot = btuPerHour / (si('area', '1 ft2') * si('temperatureDifference', '1 F'))
    return numberOf(conductanceOfLayers([{ name: 'all', resistance: inputOf(record, 'R_ft2hF_Btu') / perFoot }]))
  },
  'l-regr': (record) => {
    const loads = numbersOf(record, 'load_kW')
    const periods = numbersOf(record, 't_mean_degC').map((mean, at) => ({
      outdoor: celsius(mean),
      load: loads[at]! * 1000,
    }))
    return signatureOf(periods).conductance / 1000
  },
  // The record gives the line; two points of it bring the line back.
  'l-regr-b': (record) => {
    const [slope, intercept] = [inputOf(record, 'slope_kW_K') * 1000, inputOf(record, 'intercept_kW_at_0C') * 1000]
    const periods = [0, 10].map((mean) => ({ outdoor: celsius(mean), load: intercept - slope * mean }))
    return signatureOf(periods).balance - 273.15
  },
  'cl-996-': (record) => designOf(stationOf(record), ({ warmer }) => warmer === 0.996) - 273.15,
  'cl-99-': (record) => designOf(stationOf(record), ({ warmer }) => warmer === 0.99) - 273.15,
  'cl-travis': () => toFahrenheit(designOf('US-48453', ({ list }) => list === 'energy-star-2019')),
  'cl-berlin': () => designOf('DE-10178', ({ list }) => list === 'din-2003') - 273.15,
  'cl-berlin20': () => designOf('DE-10178', ({ list }) => list === 'din-2020') - 273.15,
  // The record lists December first; the sum of the months is the same.
  'cl-hdd-ne': () => {
    const months = normalDegreeDays('new-england')?.months ?? []
    return months.reduce((sum, month) => sum + month, 0) * 1.8
  },
  'cl-hddn-': (record) =>
    numberOf(
      monthDegreeDays({
        days: inputOf(record, 'N_days'),
        mean: celsius(inputOf(record, 'T_month_degC')),
        spread: inputOf(record, 'sigma_daily_K'),
        base: celsius(inputOf(record, 'T_base_degC')),
      }),
    ),
}

function wholeHouse(record: CheckRecord): number {
  const surface = (name: string, toOutside: number) => ({
    name,
    area: inputOf(record, `${name}_m2`),
    conductance: inputOf(record, `U_${name}`),
    toOutside,
  })
  const house = {
    name: 'house',
    surfaces: [
      surface('wall', 1),
      surface('window', 1),
      surface('roof', 1),
      surface('floor', inputOf(record, 'b_floor')),
    ],
    slabEdges: [],
    thermalBridges: 0,
    volume: inputOf(record, 'V_m3'),
    airChange: inputOf(record, 'n_1_h') / 3600,
    airHeatCapacity: roundAir,
  }
  const design = { indoor: celsius(inputOf(record, 'ti_degC')), outdoor: celsius(inputOf(record, 'to_degC')) }
  return numberOf(roomLoad(house, design))
}

function wall(record: CheckRecord, kind: OldWall): number {
  const conductance = wallConductance(kind, textOf(record, 'age_band'))
  if (conductance === undefined) throw new Error(`${record.id} is not in the table of walls.`)
  return conductance
}

function signatureOf(periods: Parameters<typeof energySignature>[0]): EnergySignature {
  const result = energySignature(periods)
  if (!result.fitted) throw new Error(result.why)
  return result.signature
}

type Design = ReturnType<typeof outdoorDesigns>[number]

function designOf(station: string, holds: (design: Design) => boolean): number {
  const found = outdoorDesigns(station).find(holds)
  if (found === undefined) throw new Error(`No outdoor design temperature of ${station}.`)
  return found.temperature
}

/** The records name the place before the number of its station. */
function stationOf(record: CheckRecord): string {
  return textOf(record, 'station').split(' ').at(-1) ?? ''
}

function celsius(degrees: number): number {
  return degrees + 273.15
}

function fahrenheit(degrees: number): number {
  return si('temperature', `${degrees} F`)
}

function toFahrenheit(kelvins: number): number {
  return kelvins * 1.8 - 459.67
}
