import { combustionAirFigure } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { type AirAppliance, expectedOf, roomAirInput } from './air-appliances.js'

/**
 * Outdoor air that a fan must bring where neither room nor openings give it.
 *
 * Fuel gas code, IFGC 304.9 (recalled): 0.35 cfm for 1,000 Btu/h, with the fan interlocked with the appliances.
 *
 * @returns m3/s
 *
 * @example
 * mechanicalAir([{ name: 'heater', heatInput: 10550, air: 'natural-draft' }]) // value 0.00595, 12.6 cfm
 */
export function mechanicalAir(appliances: readonly AirAppliance[]): Sizing {
  const why = firstImpossible(...expectedOf(appliances))
  if (why !== undefined) return cannotSize(why)
  const [heatInput, each] = [roomAirInput(appliances), combustionAirFigure('mechanical-supply')]
  return sized({
    value: heatInput * each,
    working: [
      { name: 'heat input that takes room air', value: heatInput, unit: 'W' },
      { name: 'air for a watt', value: each, unit: 'm3/s W' },
      { name: 'air to bring', value: heatInput * each, unit: 'm3/s', readAs: 'air' },
    ],
    assumed: ['nothing else blows air out of the room'],
    valid: true,
  })
}
