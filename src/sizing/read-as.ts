import { printIn, printQuantity, type UnitSystem } from '../units/index.js'

/**
 * Amounts that people read otherwise than their unit tells: gas in cubic feet an hour, its pressure in inches of water,
 * altitudes and runs of pipe in feet, what drips by the hour, air in cubic feet a minute, stored water in gallons however much
 * it is, heads in feet, what a pump gives in watts, and shares in parts or percent.
 */
export type ReadAs =
  'air' | 'water' | 'parts' | 'percent' | 'gas-flow' | 'gas-pressure' | 'distance' | 'drip' | 'head' | 'power'

/** Prints an amount, in SI, as it is read. */
export function printReadAs(value: number, read: ReadAs, system: UnitSystem): string {
  if (!Number.isFinite(value)) return 'no limit'
  switch (read) {
    case 'gas-flow':
      return printQuantity(value, 'gasFlow', system)
    case 'gas-pressure':
      return printIn(value, 'pressure', system === 'ip' ? 'in wc' : 'kPa', system === 'ip' ? 2 : 3)
    case 'distance':
      return printIn(value, 'length', system === 'ip' ? 'ft' : 'm', 1)
    case 'air':
      return printIn(value, 'volumeFlow', system === 'ip' ? 'cfm' : 'L/s', 1)
    case 'water':
      return printIn(value, 'volume', system === 'ip' ? 'gal' : 'L', 1)
    case 'parts':
      return printQuantity(value, 'concentration', system)
    case 'percent':
      return printQuantity(value, 'fraction', system)
    case 'head':
      return printQuantity(value, 'head', system)
    case 'power':
      return printIn(value, 'heatRate', 'W', 1)
    case 'drip':
      return printIn(value, 'volumeFlow', system === 'ip' ? 'gph' : 'L/h', 2)
    default:
      return neverRead(read)
  }
}

function neverRead(read: never): never {
  throw new TypeError(`nobody reads an amount as ${String(read)}`)
}
