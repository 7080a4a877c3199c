import type { LeafField, QuantityName } from '../model/index.js'

/** How an amount of each kind is written, for people who have to find one out. */
export const writtenLike: Readonly<Record<QuantityName, string>> = {
  length: '18 in',
  area: '7.1 in2',
  volume: '40 gal',
  temperature: '120 F',
  temperatureDifference: '20 F',
  pressure: '30 psi',
  heatRate: '75,000 Btu/h',
  apparentPower: '40 VA',
  volumeFlow: '4 gpm',
  gasFlow: '250 cfh',
  time: '30 min',
  fraction: '35 %',
  nominalSize: '3/4',
  date: '2025-06-10',
  count: '2',
  slope: '1/4 in/ft',
  energyPerVolume: '1,025 Btu/ft3',
  mass: '10 lb',
  voltage: '24 V',
  concentration: '42 ppm',
  current: '3 A',
  head: '12.4 ft',
  flowCoefficient: '7.5 Cv',
  velocity: '4 ft/s',
  heatRatePerLength: '580 Btu/h ft',
  heatFlux: '30 Btu/h ft2',
  thermalResistance: '1.5 h ft2 F/Btu',
  heatLossCoefficient: '650 Btu/h F',
  energy: '820 therms',
  degreeDays: '5,600 F days',
  number: '8.2',
}

/** What an answer to a question of this type looks like, as the document writes it: "plain, threaded, capped", "such as 18 in". */
export function askFor(type: LeafField): string {
  switch (type.type) {
    case 'quantity':
      return `such as ${writtenLike[type.quantity]}`
    case 'choice':
      return Object.keys(type.choices).join(', ')
    case 'reference':
      return `the id of ${type.to.join(' or ')}`
    case 'list':
      return `a list of ${askFor(type.of)}`
    case 'text':
      return 'in words'
    default:
      return neverType(type)
  }
}

function neverType(type: never): never {
  throw new TypeError(`no such type: ${String(type)}`)
}
