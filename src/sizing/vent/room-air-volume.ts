import { combustionAirFigure } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { type AirAppliance, expectedOf, roomAirInput } from './air-appliances.js'

interface Room {
  readonly appliances: readonly AirAppliance[]
  /** Air changes of the building in a second, if they were measured; 0.40 an hour is 0.000111. */
  readonly airChanges?: number | undefined
}

interface MeasuredRoom extends Room {
  readonly airChanges: number
}

/**
 * Volume of the room, with rooms open to it, that appliances need which take their air from it: the standard method.
 *
 * Fuel gas code, IFGC 304.5.1 (read). Not for a building known to change its air less than 0.40 times an hour.
 *
 * @returns m3; 0 where all appliances are sealed
 *
 * @example
 * roomAirVolume({ appliances: [{ name: 'heater', heatInput: 10550, air: 'natural-draft' }] }) // value 51, 1800 ft3
 */
export function roomAirVolume({ appliances, airChanges }: Room): Sizing {
  const why = firstImpossible(...expectedOf(appliances), ['air changes', airChanges ?? 0, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const [heatInput, each] = [roomAirInput(appliances), combustionAirFigure('indoor-volume')]
  return sized({
    value: heatInput * each,
    working: [
      { name: 'heat input that takes room air', value: heatInput, unit: 'W' },
      { name: 'volume for a watt', value: each, unit: 'm3/W' },
      { name: 'volume needed', value: heatInput * each, unit: 'm3' },
    ],
    assumed: airChanges === undefined ? ['a building that changes its air at least 0.40 times an hour'] : [],
    valid: airChanges === undefined || airChanges >= leastForStandard - roundingNoise,
  })
}

/**
 * Volume of the room, with rooms open to it, where the building's air changes were measured: the known infiltration method.
 *
 * Fuel gas code, IFGC 304.5.2 (read). More than 0.60 changes an hour are not counted.
 *
 * @returns m3; 0 where all appliances are sealed
 *
 * @example
 * const appliances = [{ name: 'heater', heatInput: 10550, air: 'natural-draft' }] as const
 * roomAirVolumeByInfiltration({ appliances, airChanges: 0.35 / 3600 }) // value 61.2, 2160 ft3
 */
export function roomAirVolumeByInfiltration({ appliances, airChanges }: MeasuredRoom): Sizing {
  const why = firstImpossible(...expectedOf(appliances), ['air changes', airChanges, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const counted = Math.min(airChanges, mostForInfiltration)
  const natural = part(appliances, 'natural-draft') / (counted * hour)
  const fan = part(appliances, 'fan-assisted') / (counted * hour)
  return sized({
    value: natural + fan,
    working: [
      { name: 'air changes that count', value: counted, unit: '1/s' },
      { name: 'volume for appliances with natural draft', value: natural, unit: 'm3' },
      { name: 'volume for appliances with a fan', value: fan, unit: 'm3' },
      { name: 'volume needed', value: natural + fan, unit: 'm3' },
    ],
    assumed: [],
    valid: true,
  })
}

/** m3 at one air change an hour. */
function part(appliances: readonly AirAppliance[], kind: 'natural-draft' | 'fan-assisted'): number {
  return roomAirInput(appliances, kind) * combustionAirFigure(`infiltration-volume-${kind}`)
}

const hour = 3600
const leastForStandard = 0.4 / hour
const mostForInfiltration = 0.6 / hour
/** 0.40 an hour stays 0.40 an hour after it was turned into changes in a second. */
const roundingNoise = 1e-12
