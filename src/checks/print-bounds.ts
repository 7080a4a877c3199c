import { printQuantity, type QuantityName, type UnitSystem } from '../units/index.js'

interface Bounds {
  readonly low: number
  readonly high: number
}

/** An amount that cannot be negative, in a term of a witness: `30 psi`, `30 psi to 60 psi`, `unknown`. */
export function printBounds({ low, high }: Bounds, quantity: QuantityName, units: UnitSystem): string {
  if (low === high) return printQuantity(low, quantity, units)
  if (low === 0 && high === Infinity) return 'unknown'
  return `${printQuantity(low, quantity, units)} to ${printQuantity(high, quantity, units)}`
}
