import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { flowExpected, meanVelocity, movingPressure } from './flow-in-pipe.js'

interface ResistedFlow {
  /** Sum of resistance coefficients, K. */
  readonly resistance: number
  /** m3/s */
  readonly flow: number
  /** m, of the pipe the coefficients belong to. */
  readonly insideDiameter: number
  /** kg/m3 */
  readonly density: number
}

/**
 * Pressure that fittings take by their resistance coefficients.
 *
 * @returns Pa
 *
 * @example
 * resistanceLoss({ resistance: 3, flow: 0.000504, insideDiameter: 0.0268, density: 983.2 }) // value 1177
 */
export function resistanceLoss({ resistance, flow, insideDiameter, density }: ResistedFlow): Sizing {
  const why = firstImpossible(
    ['resistance of the fittings', resistance, 'zero or more'],
    flowExpected(flow),
    ['inside diameter of the pipe', insideDiameter, 'above zero'],
    ['density', density, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const velocity = meanVelocity(flow, insideDiameter)
  const moving = movingPressure(velocity, density)
  return sized({
    value: resistance * moving,
    working: [
      { name: 'velocity', value: velocity, unit: 'm/s' },
      { name: 'pressure of the moving fluid', value: moving, unit: 'Pa' },
      { name: 'resistance of the fittings', value: resistance, unit: '1' },
      { name: 'pressure loss', value: resistance * moving, unit: 'Pa' },
    ],
    assumed: [],
    valid: true,
  })
}

interface ResistingLength {
  /** Sum of resistance coefficients, K. */
  readonly resistance: number
  /** m */
  readonly insideDiameter: number
  /** Darcy factor of the pipe. */
  readonly friction: number
}

/**
 * Length of pipe that loses as much as fittings of a resistance.
 *
 * @returns m
 *
 * @example
 * lengthOfResistance({ resistance: 3.6, insideDiameter: 0.154, friction: 0.015 }) // value 36.96, 240 diameters
 */
export function lengthOfResistance({ resistance, insideDiameter, friction }: ResistingLength): Sizing {
  const why = firstImpossible(
    ['resistance of the fittings', resistance, 'zero or more'],
    ['inside diameter of the pipe', insideDiameter, 'above zero'],
    ['friction factor', friction, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const diameters = resistance / friction
  return sized({
    value: diameters * insideDiameter,
    working: [
      { name: 'resistance of the fittings', value: resistance, unit: '1' },
      { name: 'friction factor', value: friction, unit: '1' },
      { name: 'length in diameters', value: diameters, unit: '1' },
      { name: 'equivalent length', value: diameters * insideDiameter, unit: 'm' },
    ],
    assumed: [],
    valid: true,
  })
}
