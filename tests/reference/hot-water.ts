import {
  burnTime,
  coilConductance,
  firstHour,
  heatCapacityOfVolume,
  heatedVolume,
  mixedVolume,
  pipeHeatLoss,
  recovery,
} from '../../src/sizing/hot-water/index.js'
import { type BurnList, hotWaterProfile, waterHeaterBins } from '../../src/tables/index.js'
import { si } from '../../src/units/index.js'
import { numberOf } from '../sizing/number-of.js'
import type { Adapter, CheckRecord } from './adapter.js'
import { inputOf, textOf } from './input-of.js'

const gallon = si('volume', '1 gal')
const perFoot = si('heatRate', '1 Btu/h') / si('length', '1 ft')

/** A key is the longest beginning of an id that an adapter answers for. */
export const adapters: Readonly<Record<string, Adapter>> = {
  // The record counts with the density near 90 F, so the water is warmed evenly around it.
  'd-recov': (record) => {
    const half = inputOf(record, 'dT_F') / 2
    const heatRate = inputOf(record, 'Q_Btu_h') * si('heatRate', '1 Btu/h')
    return numberOf(recovery({ heatRate, cold: fahrenheit(90 - half), hot: fahrenheit(90 + half) })) / (gallon / 3600)
  },
  // 40 C from 10 C, with nothing left in the tank.
  'd-v40': (record) => {
    const tank = { volume: inputOf(record, 'V_L'), usable: 1, hot: inputOf(record, 'theta_p_C') + 273.15 }
    return numberOf(mixedVolume({ ...tank, cold: 283.15, mixed: 313.15 }))
  },
  // The recovery is given, so the source is one that recovers just that; no mixing.
  'd-fhr': (record) => {
    const [cold, stored] = [fahrenheit(50), fahrenheit(120)]
    const flow = (inputOf(record, 'recovery_gph') * gallon) / 3600
    const heatRate = flow * heatCapacityOfVolume((cold + stored) / 2).value * (stored - cold)
    const tank = { volume: inputOf(record, 'V_gal') * gallon, usable: inputOf(record, 'usable') }
    return numberOf(firstHour({ ...tank, stored, cold, delivered: stored, heatRate })) / gallon
  },
  'd-coil': (record) =>
    numberOf(
      coilConductance({
        heatRate: inputOf(record, 'Q_kW') * 1000,
        entering: inputOf(record, 't_in_degC') + 273.15,
        leaving: inputOf(record, 't_out_degC') + 273.15,
        tank: inputOf(record, 't_tank_degC') + 273.15,
      }),
    ),
  'd-eu-': (record) => {
    const profile = textOf(record, 'profile')
    return profile === 'M' || profile === 'L' || profile === 'XL'
      ? hotWaterProfile(profile).draws.reduce((sum, { heat }) => sum + heat, 0) / 3.6e6
      : { notApplicable: `no profile ${profile}` }
  },
  'd-euvol': (record) => {
    const heatCapacity = inputOf(record, 'cp_kJ_kgK') * inputOf(record, 'rho_kg_L') * 1e6
    const drawn = { heat: inputOf(record, 'E_kWh') * 3.6e6, rise: inputOf(record, 'dT_K'), heatCapacity }
    return numberOf(heatedVolume(drawn)) * 1000
  },
  'd-fhrbin-': (record) => binOf(record).firstHour / gallon,
  'd-draw-': (record) => binOf(record).dailyDraw / gallon,
  'd-burn2-': (record) => burn(record, 'second-degree'),
  'd-burn3-': (record) => burn(record, 'full-thickness'),
  'd-burnc-': (record) => burn(record, 'leaflet'),
  'd-pipe-': (record) => {
    const difference = inputOf(record, 'dT_F')
    const air = fahrenheit(inputOf(record, 't_air_F'))
    const outsideDiameter = inputOf(record, 'od_in') * si('length', '1 in')
    const pipe = { outsideDiameter, air, water: air + difference / 1.8, surface: { emissivity: 0.9 } }
    return numberOf(pipeHeatLoss(pipe)) / perFoot / difference
  },
}

function binOf(record: CheckRecord): { readonly firstHour: number; readonly dailyDraw: number } {
  const bin = waterHeaterBins().find((each) => each.bin === textOf(record, 'bin'))
  if (bin === undefined) throw new Error(`${record.id} names no bin of the table.`)
  return bin
}

function burn(record: CheckRecord, list: BurnList): number {
  return numberOf(burnTime({ temperature: fahrenheit(inputOf(record, 't_degF')), list, partOfAdult: 1 }))
}

function fahrenheit(degrees: number): number {
  return si('temperature', `${degrees} F`)
}
