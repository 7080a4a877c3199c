import {
  castIronRadiator,
  catalogOutput,
  effectiveness,
  emitterOutput,
  finTubeFlowFactor,
  finTubeFactor,
  logMeanDifference,
  meanExcess,
  mixedReturn,
  outdoorForReturn,
  panelRadiator,
  resetReturn,
  resetSupply,
  returnAtSupply,
  supplyForLoad,
} from '../../src/sizing/emitters/index.js'
import { si } from '../../src/units/index.js'
import { numberOf } from '../sizing/number-of.js'
import type { Adapter, CheckRecord } from './adapter.js'
import { inputOf, numbersOf } from './input-of.js'

const squareFoot = si('area', '1 ft2')
const btuPerHour = si('heatRate', '1 Btu/h')

/** A key is the longest beginning of an id that an adapter answers for. */
export const adapters: Readonly<Record<string, Adapter>> = {
  'e-edr-': (record) => {
    const excess = (inputOf(record, 't_avg_degF') - inputOf(record, 't_room_degF')) / 1.8
    return numberOf(emitterOutput({ rating: castIronRadiator(squareFoot), excess, kept: 1 })) / btuPerHour
  },
  'e-fin-': (record) => numberOf(finTubeFactor('water', fahrenheit(inputOf(record, 't_avg_degF')))),
  'e-flow004': (record) =>
    numberOf(finTubeFlowFactor({ flow: inputOf(record, 'Q2_gpm'), ratedFlow: inputOf(record, 'Q1_gpm') })),
  'e-cf-555': (record) => {
    const rating = { output: 1, excess: inputOf(record, 'dTref_K'), exponent: inputOf(record, 'n') }
    return numberOf(emitterOutput({ rating, excess: inputOf(record, 'dT_K'), kept: 1 }))
  },
  'e-cf-2247': (record) =>
    numberOf(
      catalogOutput({
        load: inputOf(record, 'load_W'),
        factors: [inputOf(record, 'f1'), inputOf(record, 'f2')],
      }),
    ),
  'e-lmtd-': (record) => excessOf(record, 'logarithmic'),
  'e-lmtd-lib': (record) =>
    numberOf(
      logMeanDifference({
        hotIn: celsius(inputOf(record, 'Thi_degC')),
        hotOut: celsius(inputOf(record, 'Tho_degC')),
        coldIn: celsius(inputOf(record, 'Tci_degC')),
        coldOut: celsius(inputOf(record, 'Tco_degC')),
      }),
    ),
  'e-f-': (record) => {
    const rating = panelRadiator({ output: 1, exponent: inputOf(record, 'n') })
    return numberOf(emitterOutput({ rating, excess: excessOf(record, 'logarithmic'), kept: 1 }))
  },
  'e-fa-': (record) => {
    const rating = { output: 1, excess: 50, exponent: inputOf(record, 'n') }
    return numberOf(emitterOutput({ rating, excess: excessOf(record, 'arithmetic'), kept: 1 }))
  },
  'e-ret-': (record) =>
    numberOf(returnAtSupply({ ...flowingPanel(record), supply: celsius(inputOf(record, 'ts_degC')) })) - 273.15,
  'e-sup-': (record) => numberOf(supplyForLoad({ ...flowingPanel(record), load: inputOf(record, 'q_W') })) - 273.15,
  'e-reset-s-': (record) => numberOf(resetSupply(resetCase, celsius(inputOf(record, 'to_degC')))) - 273.15,
  'e-reset-r-': (record) => numberOf(resetReturn(resetCase, celsius(inputOf(record, 'to_degC')))) - 273.15,
  'e-reset-cond': (record) =>
    numberOf(outdoorForReturn(resetCase, celsius(inputOf(record, 'tr_target_degC')))) - 273.15,
  'e-mixret': (record) => {
    const temperatures = numbersOf(record, 't_degC')
    const returns = numbersOf(record, 'm_kg_s').map((flow, at) => ({ flow, temperature: celsius(temperatures[at]!) }))
    return numberOf(mixedReturn(returns)) - 273.15
  },
  'e-ntu-': (record) =>
    numberOf(effectiveness({ transferUnits: inputOf(record, 'NTU'), capacityRatio: inputOf(record, 'Cr') })),
}

/** 70/55/20 C at -15 C; only some records of the family repeat it. */
const resetCase = {
  designOutdoor: celsius(-15),
  balance: celsius(20),
  room: celsius(20),
  supply: celsius(70),
  return: celsius(55),
  exponent: 1.3,
}

function flowingPanel(record: CheckRecord): Omit<Parameters<typeof returnAtSupply>[0], 'supply'> {
  return {
    rating: panelRadiator({ output: inputOf(record, 'Q_EN442_W'), exponent: inputOf(record, 'n') }),
    air: celsius(inputOf(record, 'ti_degC')),
    flowCapacity: inputOf(record, 'm_kg_s') * inputOf(record, 'cp_J_kgK'),
  }
}

function excessOf(record: CheckRecord, mean: 'logarithmic' | 'arithmetic'): number {
  const [supply, back] = [celsius(inputOf(record, 'ts_degC')), celsius(inputOf(record, 'tr_degC'))]
  return numberOf(meanExcess({ supply, return: back, air: celsius(inputOf(record, 'ti_degC')), mean }))
}

function celsius(degrees: number): number {
  return degrees + 273.15
}

function fahrenheit(degrees: number): number {
  return si('temperature', `${degrees} F`)
}
