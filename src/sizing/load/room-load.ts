import { firstImpossible } from '../first-impossible.js'
import type { Step } from '../sized.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { airChangeConductance } from './air-change.js'

/** A wall, window, roof or floor. */
export interface Surface {
  readonly name: string
  /** m2 */
  readonly area: number
  /** W/m2 K: its U-value. */
  readonly conductance: number
  /** Part of the difference to outdoors that it sees: 1 outside, 0.5 over an unheated cellar, 0.3 to 0.6 on the ground; recalled. */
  readonly toOutside: number
}

/** The edge of a slab on the ground. */
export interface SlabEdge {
  readonly name: string
  /** m */
  readonly length: number
  /** W/m K: its F-factor. */
  readonly conductance: number
}

/** All that a room loses heat through. */
export interface LossyRoom {
  readonly name: string
  readonly surfaces: readonly Surface[]
  readonly slabEdges: readonly SlabEdge[]
  /** W/m2 K added to every surface for its edges and corners: 0 where they are in the U-values, else 0.05 to 0.15; recalled. */
  readonly thermalBridges: number
  /** m3 */
  readonly volume: number
  /** 1/s: one change an hour is 1/3600. */
  readonly airChange: number
  /** J/m3 K, of the air: less at altitude. */
  readonly airHeatCapacity: number
}

interface Design {
  /** K */
  readonly indoor: number
  /** K */
  readonly outdoor: number
}

/**
 * Heat that a degree between inside and outside carries out of a room: through its surfaces, the edge of its slab, and with the
 * air.
 *
 * @returns W/K
 *
 * @example
 * roomConductance(room) // value 438.4
 */
export function roomConductance(room: LossyRoom): Sizing {
  const why = whyNoRoom(room)
  if (why !== undefined) return cannotSize(`${room.name}: ${why}`)
  const air = airChangeConductance(room)
  if (!air.sized) return cannotSize(`${room.name}: ${air.why}`)
  const steps: readonly Step[] = [
    ...room.surfaces.map(({ name, area, conductance, toOutside }) => ({
      name,
      value: area * (conductance + room.thermalBridges) * toOutside,
      unit: 'W/K',
    })),
    ...room.slabEdges.map(({ name, length, conductance }) => ({ name, value: length * conductance, unit: 'W/K' })),
    { name: 'air change', value: air.value, unit: 'W/K' },
  ]
  const value = steps.reduce((sum, step) => sum + step.value, 0)
  return sized({
    value,
    working: [...steps, { name: `conductance of ${room.name}`, value, unit: 'W/K' }],
    assumed: air.assumed,
    valid: air.valid,
  })
}

/**
 * Load of a room on the design day, without sun, people or an addition for heating up.
 *
 * @returns W
 *
 * @example
 * roomLoad(room, { indoor: 293.15, outdoor: 263.15 }) // value 13152
 */
export function roomLoad(room: LossyRoom, { indoor, outdoor }: Design): Sizing {
  const why = firstImpossible(
    ['indoor temperature', indoor, 'above zero'],
    ['outdoor temperature', outdoor, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const conductance = roomConductance(room)
  if (!conductance.sized) return conductance
  const difference = Math.max(0, indoor - outdoor)
  const value = conductance.value * difference
  return sized({
    ...conductance,
    value,
    working: [
      ...conductance.working,
      { name: 'indoors above outdoors', value: indoor - outdoor, unit: 'K' },
      { name: `load of ${room.name}`, value, unit: 'W' },
    ],
    assumed: ['no sun, no people, nothing for heating up', ...conductance.assumed],
    valid: conductance.valid && indoor >= outdoor,
  })
}

function whyNoRoom({ surfaces, slabEdges, thermalBridges }: LossyRoom): string | undefined {
  return firstImpossible(
    ...surfaces.flatMap(({ name, area, conductance, toOutside }) => [
      [`area of ${name}`, area, 'zero or more'] as const,
      [`conductance of ${name}`, conductance, 'zero or more'] as const,
      [`part of the difference at ${name}`, toOutside, 'a share'] as const,
    ]),
    ...slabEdges.flatMap(({ name, length, conductance }) => [
      [`length of ${name}`, length, 'zero or more'] as const,
      [`conductance of ${name}`, conductance, 'zero or more'] as const,
    ]),
    ['addition for thermal bridges', thermalBridges, 'zero or more'],
  )
}
