import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { impossiblePipe, type SmoothPipe } from './smooth-pipe.js'
import { cubicFootPerHour, foot, inch, inchOfWater, psi } from './units.js'

interface OldGasPipe extends SmoothPipe {
  /** Pa */
  readonly drop: number
  /** Relative to air. */
  readonly specificGravity: number
}

/**
 * Gas that a pipe carries by the older formula of Spitzglass, to follow an old calculation. It gives 14 % (1-1/4 in.) to
 * 31 % (1/2 in.) less than the equation of the code; new work does not use it.
 *
 * @returns m3/s at 60 F
 *
 * @example
 * spitzglassCapacity({ insideDiameter: 0.0158, length: 3.048, drop: 124.5, specificGravity: 0.6 }) // value 0.000943, 120 cfh
 */
export function spitzglassCapacity({ drop, specificGravity, ...pipe }: OldGasPipe): Sizing {
  const why =
    firstImpossible(
      ['drop along the gas pipe', drop, 'zero or more'],
      ['specific gravity of the gas', specificGravity, 'above zero'],
    ) ?? impossiblePipe(pipe)
  if (why !== undefined) return cannotSize(why)
  const bore = pipe.insideDiameter / inch
  const friction = 1 + 3.6 / bore + 0.03 * bore
  const slope = drop / inchOfWater / (pipe.length / foot)
  const value = 3550 * Math.sqrt((slope * bore ** 5) / (specificGravity * friction)) * cubicFootPerHour
  return sized({
    value,
    working: [
      { name: 'friction term', value: friction, unit: '1' },
      { name: 'drop over length', value: drop / pipe.length, unit: 'Pa/m' },
      { name: 'gas that it carries', value, unit: 'm3/s', readAs: 'gas-flow' },
    ],
    assumed: ['gas below 1 psi'],
    valid: drop < psi,
  })
}
