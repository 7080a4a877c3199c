import { burnerStarts, waterForRun } from '../../src/sizing/boiler/index.js'
import { si } from '../../src/units/index.js'
import { numberOf } from '../sizing/number-of.js'
import type { Adapter } from './adapter.js'
import { inputOf } from './input-of.js'

const btuPerHour = si('heatRate', '1 Btu/h')
const gallon = si('volume', '1 gal')

/** A key is the longest beginning of an id that an adapter answers for. */
export const adapters: Readonly<Record<string, Adapter>> = {
  // The record counts 500 Btu/h for a gallon a minute and a degree.
  'l-buffer': (record) =>
    numberOf(
      waterForRun({
        lowestOutput: inputOf(record, 'Q_source_Btu_h') * btuPerHour,
        load: inputOf(record, 'Q_load_Btu_h') * btuPerHour,
        onTime: inputOf(record, 't_min') * 60,
        heatCapacity: (500 * btuPerHour * 60 * 1.8) / gallon,
        swing: inputOf(record, 'dT_F') / 1.8,
      }),
    ) / gallon,
  // The record gives the heat capacity of all water at once.
  'l-cyc': (record) =>
    numberOf(
      burnerStarts({
        lowestOutput: inputOf(record, 'Q_burner_Btu_h') * btuPerHour,
        load: inputOf(record, 'Q_load_Btu_h') * btuPerHour,
        volume: 1,
        heatCapacity: inputOf(record, 'C_Btu_F') * btuPerHour * 3600 * 1.8,
        swing: inputOf(record, 'band_F') / 1.8,
      }),
    ) * 3600,
}
