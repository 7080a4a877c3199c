import { combustionAirFigure } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/**
 * Heat input of appliances taking room air that a volume is enough for by the standard method of the fuel gas code
 * (IFGC 304.5.1).
 *
 * @param volume m3
 * @returns W
 *
 * @example
 * heatInputForRoom(51) // value 10556, 36,000 Btu/h for 1,800 ft3
 */
export function heatInputForRoom(volume: number): Sizing {
  const why = firstImpossible(['volume of the room', volume, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const each = combustionAirFigure('indoor-volume')
  return sized({
    value: volume / each,
    working: [
      { name: 'volume of the room', value: volume, unit: 'm3' },
      { name: 'volume for a watt', value: each, unit: 'm3/W' },
      { name: 'heat input', value: volume / each, unit: 'W' },
    ],
    assumed: ['a building that changes its air at least 0.40 times an hour'],
    valid: true,
  })
}
