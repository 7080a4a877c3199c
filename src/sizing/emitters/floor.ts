import { si } from '../../units/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/**
 * How a warm floor gives heat: 2 Btu/h ft2 F of common practice, or 8.92 W/m2 times the excess to the power of 1.1 (EN 1264,
 * recalled).
 */
export type FloorLaw = 'common-practice' | 'en-1264'

interface WarmFloor {
  /** K */
  readonly surface: number
  /** K */
  readonly room: number
  readonly law: FloorLaw
}

/**
 * Heat that a square meter of floor gives. With the warmest surface that is allowed, the most that the floor can give.
 *
 * @returns W/m2
 *
 * @example
 * floorOutput({ surface: 302.59, room: 294.26, law: 'common-practice' }) // value 94.6, or 30 Btu/h for a square foot at 85 F
 */
export function floorOutput({ surface, room, law }: WarmFloor): Sizing {
  const why = firstImpossible(['surface temperature', surface, 'above zero'], ['room temperature', room, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const { factor, exponent } = laws[law]
  const excess = Math.max(0, surface - room)
  const value = factor * excess ** exponent
  return sized({
    value,
    working: [
      { name: 'surface above the room', value: surface - room, unit: 'K' },
      { name: 'heat of the floor', value, unit: 'W/m2' },
    ],
    assumed: [`the law of ${law}`],
    valid: surface >= room && excess <= 15,
  })
}

interface LoadedFloor {
  /** W */
  readonly load: number
  /** m2 that give heat: what carpets and cabinets cover does not count. */
  readonly area: number
  /** K */
  readonly room: number
  readonly law: FloorLaw
}

/**
 * Surface temperature with which a floor carries a load, to hold against the limit of its kind.
 *
 * @returns K
 *
 * @example
 * floorSurface({ load: 1892, area: 20, room: 294.26, law: 'common-practice' }) // value 302.59, or 85 F
 */
export function floorSurface({ load, area, room, law }: LoadedFloor): Sizing {
  const why = firstImpossible(
    ['load', load, 'zero or more'],
    ['area of the floor', area, 'above zero'],
    ['room temperature', room, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const { factor, exponent } = laws[law]
  const heat = load / area
  const excess = (heat / factor) ** (1 / exponent)
  const value = room + excess
  return sized({
    value,
    working: [
      { name: 'heat of the floor', value: heat, unit: 'W/m2' },
      { name: 'surface above the room', value: excess, unit: 'K' },
      { name: 'surface temperature', value, unit: 'K' },
    ],
    assumed: [`the law of ${law}`],
    valid: excess <= 15,
  })
}

interface FloorOverWater {
  /** K */
  readonly surface: number
  /** K */
  readonly room: number
  readonly law: FloorLaw
  /** m2 K/W between water and surface: tube, slab or plates, and covering. */
  readonly resistance: number
}

/**
 * Mean water temperature under a floor surface. With the warmest surface that is allowed, the warmest water that is.
 *
 * @returns K
 *
 * @example
 * // 85 F on the surface, 70 F in the room, R 0.83 ft2 h F/Btu between: 110 F in the tubes
 * floorWater({ surface: 302.59, room: 294.26, law: 'common-practice', resistance: 0.1468 }) // value 316.5
 */
export function floorWater({ resistance, ...floor }: FloorOverWater): Sizing {
  const why = firstImpossible(['resistance over the water', resistance, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const heat = floorOutput(floor)
  if (!heat.sized) return heat
  const rise = heat.value * resistance
  const value = floor.surface + rise
  return sized({
    ...heat,
    value,
    working: [
      ...heat.working,
      { name: 'water above the surface', value: rise, unit: 'K' },
      { name: 'mean water temperature', value, unit: 'K' },
    ],
    assumed: [...heat.assumed, 'no heat downward'],
  })
}

const laws: Readonly<Record<FloorLaw, { readonly factor: number; readonly exponent: number }>> = {
  'common-practice': {
    factor: si('heatRate', '2 Btu/h') / (si('area', '1 ft2') * si('temperatureDifference', '1 F')),
    exponent: 1,
  },
  'en-1264': { factor: 8.92, exponent: 1.1 },
}
