import {
  carriedHeat,
  fluidConductivity,
  fluidDensity,
  fluidHeatCapacity,
  fluidViscosity,
  type FluidState,
  freezingTemperature,
  type Glycol,
  glycolMassFraction,
  glycolVolumeFraction,
  type HeatingFluid,
  vaporPressure,
} from '../../src/sizing/index.js'
import type { Sizing } from '../../src/sizing/sizing.js'
import { si } from '../../src/units/index.js'
import { numberOf } from '../sizing/number-of.js'
import type { Adapter, CheckRecord } from './adapter.js'
import { inputOf } from './input-of.js'

const freezing = 273.15
const anotherFormulation =
  'it verifies a program of IAPWS-IF97, IAPWS-95 or IAPWS R12-08 to eight digits; the library calculates by SR6-08 and SR1-86'

const formulation: Adapter = () => ({ notApplicable: anotherFormulation })

/** A key is the longest beginning of an id that an adapter answers for. */
export const adapters: Readonly<Record<string, Adapter>> = {
  'w-if97-': formulation,
  'w-95-': formulation,
  'w-mu08-': formulation,
  'w-sr608-rho-': (record) => water(fluidDensity, inputOf(record, 'T_K')),
  'w-sr608-cp-': (record) => water(fluidHeatCapacity, inputOf(record, 'T_K')) / 1000,
  'w-sr608-mu-': (record) => water(fluidViscosity, inputOf(record, 'T_K')) * 1e6,
  'w-sr608-k-': (record) => water(fluidConductivity, inputOf(record, 'T_K')),
  'w-sr608-w-': () => ({ notApplicable: 'nothing here asks how fast sound is in water' }),
  'w-D-': (record) => water(fluidDensity, celsius(record)),
  'w-C-': (record) => water(fluidHeatCapacity, celsius(record)),
  'w-V-': (record) => water(fluidViscosity, celsius(record)),
  'w-L-': (record) => water(fluidConductivity, celsius(record)),
  'w-cipm-': (record) => water(fluidDensity, celsius(record)),
  'w-ps-': (record) => numberOf(vaporPressure(celsius(record))) / 1000,
  'pg-rho-': (record) => mixed(fluidDensity, record),
  'pg-cp-': (record) => mixed(fluidHeatCapacity, record),
  'pg-mu-': (record) => mixed(fluidViscosity, record),
  'pg-k-': (record) => mixed(fluidConductivity, record),
  'pg-tf-': (record) => numberOf(freezingTemperature(byVolume(record, 'propylene-glycol'))) - freezing,
  'eg-tf-': (record) => numberOf(freezingTemperature(byVolume(record, 'ethylene-glycol'))) - freezing,
  'pg-v2m-': (record) => 100 * glycolMassFraction('propylene-glycol', inputOf(record, 'x_volpct') / 100).value,
  'mpg-C-': (record) => pure(fluidHeatCapacity, record, 'propylene-glycol'),
  'mpg-V-': (record) => pure(fluidViscosity, record, 'propylene-glycol'),
  'mpg-L-': (record) => pure(fluidConductivity, record, 'propylene-glycol'),
  'mpg-tf-': (record) => numberOf(freezingTemperature(byMass(record, 'propylene-glycol'))) - freezing,
  'meg-D-': (record) => pure(fluidDensity, record, 'ethylene-glycol'),
  'meg-C-': (record) => pure(fluidHeatCapacity, record, 'ethylene-glycol'),
  'meg-V-': (record) => pure(fluidViscosity, record, 'ethylene-glycol'),
  'meg-L-': (record) => pure(fluidConductivity, record, 'ethylene-glycol'),
  'meg-tf-': (record) => numberOf(freezingTemperature(byMass(record, 'ethylene-glycol'))) - freezing,
  // Half a degree above and below, so that density and heat capacity are those of the temperature.
  'h-500-': (record) => {
    const metered = si('temperature', `${inputOf(record, 't_degF')} F`)
    const half = si('temperatureDifference', '0.5 F')
    const flow = si('volumeFlow', '1 gpm')
    return (
      numberOf(carriedHeat({ flow, fluid: 'water', supply: metered + half, return: metered - half, metered })) /
      si('heatRate', '1 Btu/h')
    )
  },
  'h-kW': () => ({
    notApplicable: 'heat capacity is not handed over but calculated; mass x heat capacity x difference',
  }),
}

type Property = (state: FluidState) => Sizing

function water(property: Property, temperature: number): number {
  return numberOf(property({ fluid: 'water', temperature }))
}

function mixed(property: Property, record: CheckRecord): number {
  return numberOf(property({ fluid: byVolume(record, 'propylene-glycol'), temperature: celsius(record) }))
}

function pure(property: Property, record: CheckRecord, glycol: Glycol): number {
  return numberOf(property({ fluid: byMass(record, glycol), temperature: celsius(record) }))
}

function byVolume(record: CheckRecord, glycol: Glycol): Exclude<HeatingFluid, 'water'> {
  return { glycol, volumeFraction: inputOf(record, 'x_volpct') / 100 }
}

function byMass(record: CheckRecord, glycol: Glycol): Exclude<HeatingFluid, 'water'> {
  return { glycol, volumeFraction: numberOf(glycolVolumeFraction(glycol, inputOf(record, 'x_massfrac'))) }
}

function celsius(record: CheckRecord): number {
  return inputOf(record, 't_degC') + freezing
}
