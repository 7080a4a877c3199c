import {
  airFromAnalysis,
  calciteForAcid,
  carbonDioxideInFlue,
  condensate,
  condensedShare,
  condensingEfficiency,
  dewPoint,
  flueDewPoint,
  grossHeatingValue,
  grossOverNet,
  netHeatingValue,
  oxygenInFlue,
  theoreticalAir,
} from '../../src/sizing/combustion/index.js'
import { molarMass, molarMassOf } from '../../src/sizing/combustion/products.js'
import { type Fuel, fuelNamed } from '../../src/tables/index.js'
import { si } from '../../src/units/index.js'
import { numberOf } from '../sizing/number-of.js'
import type { Adapter, CheckRecord } from './adapter.js'
import { inputOf } from './input-of.js'

const pressure = 101_325
const methane = fuelNamed('methane')
const naturalGas = fuelNamed('natural-gas')

const dewPointOfShare: Adapter = (record) =>
  numberOf(dewPoint({ waterShare: inputOf(record, 'y_H2O'), pressure: pressureOf(record) })) - 273.15

/** A key is the longest beginning of an id that an adapter answers for. */
export const adapters: Readonly<Record<string, Adapter>> = {
  'c-dew-': (record) => numberOf(flueDewPoint({ ...burningOf(record), pressure })) - 273.15,
  'c-co2-': (record) => 100 * numberOf(carbonDioxideInFlue(burningOf(record))),
  'c-o2-': (record) => 100 * numberOf(oxygenInFlue(burningOf(record))),
  'c-ms-af': (record) =>
    numberOf(
      airFromAnalysis({
        fuel: methane,
        carbonDioxide: inputOf(record, 'CO2') / 100,
        carbonMonoxide: inputOf(record, 'CO') / 100,
        nitrogen: inputOf(record, 'N2') / 100,
      }),
    ),
  'c-ms-afm': (record) => (inputOf(record, 'AF_molar') * molarMass.air) / molarMassOf(methane),
  'c-ms-ta': (record) => (100 * inputOf(record, 'AF_molar')) / numberOf(theoreticalAir(methane)),
  'c-ms-dew': dewPointOfShare,
  'c-3831-dew': dewPointOfShare,
  'c-hhv-ch4': () => numberOf(grossHeatingValue(methane)) / 1000,
  'c-lhv-ch4': () => numberOf(netHeatingValue(methane)) / 1000,
  'c-lhvhhv-': (record) => numberOf(grossOverNet(fuelOf(record))),
  'c-cond-propane': () => numberOf(condensate({ fuel: fuelNamed('propane'), heat: 3.6e6, condensedShare: 1 })),
  'c-cond-m3': (record) => condensateOfNaturalGas(inputOf(record, 'V_m3n'), 1),
  // A house condenses 60 to 70 % of the most there can be: the same reference, read.
  'c-cond-year': (record) => condensateOfNaturalGas(inputOf(record, 'gas_m3'), 0.65),
  'c-eff-': (record) =>
    numberOf(condensingEfficiency({ ...flueOf(record), excessAir: inputOf(record, 'excess_air'), jacketLoss: 0 })),
  'c-frac-': (record) => numberOf(condensedShare(flueOf(record))),
  'c-caco3-': (record) =>
    numberOf(calciteForAcid({ volume: inputOf(record, 'V_L') / 1000, pH: inputOf(record, 'pH') })),
}

function burningOf(record: CheckRecord): { readonly fuel: Fuel; readonly excessAir: number } {
  return { fuel: fuelOf(record), excessAir: inputOf(record, 'excess_air') }
}

function fuelOf({ id }: CheckRecord): Fuel {
  if (id.includes('-propane')) return fuelNamed('propane')
  return id.includes('-ng') ? naturalGas : methane
}

/** Efficiencies and condensed shares: methane with 25 % excess air. */
function flueOf(record: CheckRecord): Parameters<typeof condensedShare>[0] {
  return { fuel: methane, excessAir: 0.25, flueTemperature: inputOf(record, 't_flue_degC') + 273.15, pressure }
}

function pressureOf({ inputs }: CheckRecord): number {
  return typeof inputs['p_psia'] === 'number' ? inputs['p_psia'] * si('pressure', '1 psi') : pressure
}

/** Liters, at a kilogram each, from cubic meters at 0 C and one atmosphere. */
function condensateOfNaturalGas(cubicMeters: number, share: number): number {
  const moles = (cubicMeters * pressure) / (8.31446 * 273.15)
  const heat = moles * naturalGas.parts.reduce((sum, part) => sum + part.share * part.heat, 0)
  return numberOf(condensate({ fuel: naturalGas, heat, condensedShare: share }))
}
