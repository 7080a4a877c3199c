import { printReadAs } from './read-as.js'
import type { Step } from './sized.js'
import { printQuantity, type QuantityName, type UnitSystem } from '../units/index.js'

/** A step of a calculation in the units of the reader: `swelling of the water 2.24 gal`. */
export function stepText({ name, value, unit, readAs }: Step, system: UnitSystem): string {
  const amount = readAs === undefined ? amountText(value, unit, system) : printReadAs(value, readAs, system)
  return name === '' ? amount : `${name}: ${amount}`
}

/** An amount, in SI, in the units of the reader. */
export function amountText(value: number, unit: string, system: UnitSystem): string {
  const quantity = unit === 'K' ? warmth(value) : quantities.get(unit)
  return quantity === undefined ? plainText(value, unit) : printQuantity(value, quantity, system)
}

/** Temperatures of water and weather lie far above 200 K, and no difference of them comes near it. */
function warmth(kelvin: number): QuantityName {
  return Math.abs(kelvin) < 200 ? 'temperatureDifference' : 'temperature'
}

function plainText(value: number, unit: string): string {
  const digits = Number.isFinite(value) ? String(Number(value.toPrecision(5))) : 'no limit'
  return unit === '1' ? digits : `${digits} ${unit}`
}

const quantities: ReadonlyMap<string, QuantityName> = new Map([
  ['m', 'length'],
  ['m2', 'area'],
  ['m3', 'volume'],
  ['m3/s', 'volumeFlow'],
  ['m/s', 'velocity'],
  ['Pa', 'pressure'],
  ['W', 'heatRate'],
  ['W/K', 'heatLossCoefficient'],
  ['W/m', 'heatRatePerLength'],
  ['W/m2', 'heatFlux'],
  ['m2 K/W', 'thermalResistance'],
  ['J', 'energy'],
  ['K d', 'degreeDays'],
  ['J/m3', 'energyPerVolume'],
  ['s', 'time'],
  ['kg', 'mass'],
  ['V', 'voltage'],
  ['A', 'current'],
  ['VA', 'apparentPower'],
])
