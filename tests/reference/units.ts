import { cvFromKv } from '../../src/sizing/index.js'
import { si } from '../../src/units/index.js'
import { numberOf } from '../sizing/number-of.js'
import type { Adapter } from './adapter.js'

const btuPerHour = si('heatRate', '1 Btu/h')
const foot = si('length', '1 ft')
const fahrenheit = si('temperatureDifference', '1 F')

/** A key is the longest beginning of an id that an adapter answers for. */
export const adapters: Readonly<Record<string, Adapter>> = {
  'u-btuh': () => btuPerHour,
  'u-therm': () => (1e5 * btuPerHour * 3600) / 1e6,
  'u-gal': () => si('volume', '1 gal') * 1000,
  'u-psi': () => si('pressure', '1 psi'),
  'u-fth2o': () => 12 * si('pressure', '1 in wc'),
  'u-psiftw': () => si('pressure', '1 psi') / (12 * si('pressure', '1 in wc')),
  'u-U': () => btuPerHour / (foot ** 2 * fahrenheit),
  'u-k': () => btuPerHour / (foot * fahrenheit),
  'u-bhp': () => si('heatRate', '1 boiler hp') / btuPerHour,
  'u-edrw': () => 150 * btuPerHour,
  'u-gpm': () => si('volumeFlow', '1 gpm') * 1000,
  'u-mbh': () => si('heatRate', '1 MBH') / 1000,
  'u-hddKF': () => fahrenheit,
  'u-cp': () => (btuPerHour * 3600) / (si('mass', '1 lb') * fahrenheit),
  'u-kv': () => numberOf(cvFromKv(1)),
}
