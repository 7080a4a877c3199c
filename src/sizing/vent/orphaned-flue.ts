import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface OrphanedFlue {
  /** m2, clear inside of the flue. */
  readonly flueArea: number
  /** m, inside diameters of the draft hood outlets that stay on it. */
  readonly outletDiameters: readonly number[]
}

/**
 * How many times larger a flue is than the outlets of the appliances that stay on it.
 *
 * The fuel gas code (IFGC 503.5.5, read) allows a masonry flue 7 times the smallest outlet on it: larger ones stay cold and spill.
 * With several appliances the smallest outlet counts.
 *
 * @returns flue area over outlet area
 *
 * @example
 * orphanedFlueRatio({ flueArea: 0.04681, outletDiameters: [0.0762] }) // value 10.3
 */
export function orphanedFlueRatio({ flueArea, outletDiameters }: OrphanedFlue): Sizing {
  const smallest = Math.min(...outletDiameters)
  const why = firstImpossible(
    ['area of the flue', flueArea, 'above zero'],
    ['diameter of the smallest outlet', smallest, 'above zero'],
  )
  if (outletDiameters.length === 0)
    return cannotSize('Nothing stays on the flue, so there is no outlet to compare it with.')
  if (why !== undefined) return cannotSize(why)
  const outlet = circle(smallest)
  return sized({
    value: flueArea / outlet,
    working: [
      { name: 'area of the flue', value: flueArea, unit: 'm2' },
      { name: 'area of the smallest outlet', value: outlet, unit: 'm2' },
      { name: 'flue over outlet', value: flueArea / outlet, unit: '1' },
    ],
    assumed: [],
    valid: true,
  })
}

/**
 * Largest flue for the outlets that stay on it.
 *
 * @returns m2
 *
 * @example
 * largestFlue({ outletDiameters: [0.0762], mostRatio: 7 }) // value 0.0319, 49.5 in2
 */
export function largestFlue({ outletDiameters, mostRatio }: LargestFlue): Sizing {
  if (outletDiameters.length === 0) return cannotSize('Nothing stays on the flue, so no size can be named for it.')
  const smallest = Math.min(...outletDiameters)
  const why = firstImpossible(
    ['diameter of the smallest outlet', smallest, 'above zero'],
    ['allowed ratio', mostRatio, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const outlet = circle(smallest)
  return sized({
    value: outlet * mostRatio,
    working: [
      { name: 'area of the smallest outlet', value: outlet, unit: 'm2' },
      { name: 'allowed ratio', value: mostRatio, unit: '1' },
      { name: 'largest flue', value: outlet * mostRatio, unit: 'm2' },
    ],
    assumed: [],
    valid: true,
  })
}

interface LargestFlue {
  /** m, inside diameters of the draft hood outlets that stay on it. */
  readonly outletDiameters: readonly number[]
  /** Flue area over outlet area; 7 in the fuel gas code. */
  readonly mostRatio: number
}

function circle(diameter: number): number {
  return (Math.PI * diameter ** 2) / 4
}
