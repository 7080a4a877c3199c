/** Every kind of amount the library knows, in a fixed order. */
export const quantityNames = Object.freeze([
  'length',
  'area',
  'volume',
  'temperature',
  'temperatureDifference',
  'pressure',
  'heatRate',
  'apparentPower',
  'volumeFlow',
  'gasFlow',
  'time',
  'fraction',
  'nominalSize',
  'date',
  'count',
  'slope',
  'energyPerVolume',
  'mass',
  'voltage',
  'current',
  'concentration',
  'head',
  'flowCoefficient',
  'velocity',
  'heatRatePerLength',
  'heatFlux',
  'thermalResistance',
  'heatLossCoefficient',
  'energy',
  'degreeDays',
  'number',
] as const)

/**
 * The name of a kind of amount. The number that belongs to it is always held in one unit:
 *
 * | quantity | held in |
 * | --- | --- |
 * | length, area, volume | m, m2, m3 |
 * | temperature, temperatureDifference | K |
 * | pressure | Pa, gauge |
 * | heatRate, apparentPower | W, VA |
 * | volumeFlow, gasFlow | m3/s; gas at 60 F |
 * | time | s |
 * | fraction | 1 (95 % is 0.95) |
 * | nominalSize | nominal inches, a designation and not a length |
 * | date | days since 1970-01-01 |
 * | count | whole number |
 * | slope | m of fall per m of run |
 * | energyPerVolume | J/m3 |
 * | mass, voltage, current | kg, V, A |
 * | concentration | 1 (42 ppm is 0.000042) |
 * | head | m of the fluid that is pumped |
 * | flowCoefficient | m3/h of water at 1 bar (Kv) |
 * | velocity | m/s |
 * | heatRatePerLength, heatFlux | W/m, W/m2 |
 * | thermalResistance | m2 K/W |
 * | heatLossCoefficient | W/K |
 * | energy | J |
 * | degreeDays | K days |
 * | number | 1, written bare: pH, exponents |
 */
export type QuantityName = (typeof quantityNames)[number]

declare const brand: unique symbol

/**
 * A number known to be an amount of quantity `Q` in the unit that quantity is held in, so that a pressure cannot be
 * handed over where a length is wanted. Made by {@link si}.
 */
export type SI<Q extends QuantityName> = number & { readonly [brand]: Q }

/** All numbers from `low` to `high`, both ends included; an end may be infinite. */
export interface Interval {
  readonly low: number
  readonly high: number
}

/** Which units to print: the trade's inch-pound units or metric ones. */
export type UnitSystem = 'ip' | 'si'
