import { combustionAirFigure } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { type AirAppliance, expectedOf, roomAirInput } from './air-appliances.js'

interface RoomsJoined {
  readonly appliances: readonly AirAppliance[]
  readonly stories: 'same' | 'different'
}

interface OutdoorOpenings {
  readonly appliances: readonly AirAppliance[]
  /** Two openings straight through the wall or by vertical ducts, two by horizontal ducts, or a single one. */
  readonly way: 'two-direct' | 'two-horizontal-ducts' | 'single'
  /** m2, areas of all vent connectors in the room; a single opening is no smaller than their sum. */
  readonly connectorAreas: readonly number[]
  /** m3 of room there is over m3 it should have, where indoor and outdoor air are combined; 0 for outdoor air alone. */
  readonly indoorShare: number
}

/**
 * Free area of the openings that join the room to another, so that both volumes count.
 *
 * Fuel gas code, IFGC 304.5.3: same story, two openings, each 1 in2 for 1,000 Btu/h and at least 100 in2 (read); different
 * stories, 2 in2 for 1,000 Btu/h together (recalled).
 *
 * @returns m2, of each opening on the same story, of all together between stories
 *
 * @example
 * const appliances = [{ name: 'heater', heatInput: 10550, air: 'natural-draft' }] as const
 * openingsBetweenRooms({ appliances, stories: 'same' }) // value 0.0645, 100 in2
 */
export function openingsBetweenRooms({ appliances, stories }: RoomsJoined): Sizing {
  const why = firstImpossible(...expectedOf(appliances))
  if (why !== undefined) return cannotSize(why)
  const heatInput = roomAirInput(appliances)
  const each = combustionAirFigure(stories === 'same' ? 'opening-same-story' : 'openings-between-stories')
  const least = stories === 'same' && heatInput > 0 ? leastBetweenRooms : 0
  const value = Math.max(heatInput * each, least)
  return sized({
    value,
    working: [
      { name: 'heat input that takes room air', value: heatInput, unit: 'W' },
      { name: 'area for a watt', value: each, unit: 'm2/W' },
      { name: 'least area', value: least, unit: 'm2' },
      { name: stories === 'same' ? 'each of two openings' : 'all openings together', value, unit: 'm2' },
    ],
    assumed: [],
    valid: true,
  })
}

/**
 * Free area of openings to the outdoors.
 *
 * Fuel gas code, IFGC 304.6 and for combined air 304.7 (recalled).
 *
 * @returns m2, of each opening
 *
 * @example
 * const appliances = [{ name: 'heater', heatInput: 10550, air: 'natural-draft' }] as const
 * outdoorOpenings({ appliances, way: 'two-direct', connectorAreas: [], indoorShare: 0 }) // value 0.0058, 9 in2
 */
export function outdoorOpenings({ appliances, way, connectorAreas, indoorShare }: OutdoorOpenings): Sizing {
  const connectors = connectorAreas.reduce((sum, area) => sum + area, 0)
  const why = firstImpossible(
    ...expectedOf(appliances),
    ['area of the vent connectors', connectors, 'zero or more'],
    ['indoor part of the air', indoorShare, 'zero or more'],
  )
  if (why !== undefined) return cannotSize(why)
  const [heatInput, each] = [roomAirInput(appliances), combustionAirFigure(figures[way])]
  const full = Math.max(heatInput * each, way === 'single' && heatInput > 0 ? connectors : 0)
  const value = full * Math.max(0, 1 - indoorShare)
  return sized({
    value,
    working: [
      { name: 'heat input that takes room air', value: heatInput, unit: 'W' },
      { name: 'area for a watt', value: each, unit: 'm2/W' },
      ...(way === 'single' ? [{ name: 'vent connectors together', value: connectors, unit: 'm2' }] : []),
      { name: 'opening for outdoor air alone', value: full, unit: 'm2' },
      { name: 'part of the air that the rooms give', value: indoorShare, unit: '1' },
      { name: way === 'single' ? 'the opening' : 'each of two openings', value, unit: 'm2' },
    ],
    assumed: [],
    valid: true,
  })
}

const figures = {
  'two-direct': 'opening-outdoors-direct',
  'two-horizontal-ducts': 'opening-outdoors-horizontal-duct',
  single: 'opening-outdoors-single',
} as const

/** m2, 100 in2 */
const leastBetweenRooms = 0.064516
