import { flueGasDensity, flueGasFlow } from '../../src/sizing/combustion/index.js'
import { ventPressureLoss } from '../../src/sizing/vent/index.js'
import { fuelNamed } from '../../src/tables/index.js'
import { numberOf } from '../sizing/number-of.js'
import type { Adapter } from './adapter.js'
import { inputOf } from './input-of.js'

export const adapters: Readonly<Record<string, Adapter>> = {
  'v-': (record) => {
    const flue = { fuel: fuelNamed('methane'), excessAir: 0.25, temperature: 333.15, pressure: 101_325 }
    return numberOf(
      ventPressureLoss({
        flow: numberOf(flueGasFlow({ ...flue, heatInput: inputOf(record, 'Q_kW_HHV') * 1000 })),
        density: numberOf(flueGasDensity(flue)),
        viscosity: inputOf(record, 'mu_Pas'),
        diameter: inputOf(record, 'D_m'),
        length: inputOf(record, 'L_m'),
        roughness: inputOf(record, 'eps_m'),
        resistance: inputOf(record, 'sumK'),
      }),
    )
  },
}
