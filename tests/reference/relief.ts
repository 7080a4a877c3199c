import { mostWhileRelieving, reliefSteamBySurface, smallestReliefInlet } from '../../src/sizing/relief/index.js'
import { si } from '../../src/units/index.js'
import { numberOf } from '../sizing/number-of.js'
import type { Adapter } from './adapter.js'
import { inputOf } from './input-of.js'

const poundPerHour = si('mass', '1 lb') / 3600
const psi = si('pressure', '1 psi')

/** A key is the longest beginning of an id that an adapter answers for. */
export const adapters: Readonly<Record<string, Adapter>> = {
  'r-hs-8': (record) => {
    const area = inputOf(record, 'area_ft2') * si('area', '1 ft2')
    return numberOf(reliefSteamBySurface({ area, tubes: 'fire-tube' })) / poundPerHour
  },
  'r-min': (record) => numberOf(smallestReliefInlet(inputOf(record, 'Q_in_Btu_h') * si('heatRate', '1 Btu/h'))),
  'r-acc': (record) => numberOf(mostWhileRelieving(inputOf(record, 'MAWP_psig') * psi)) / psi,
}
