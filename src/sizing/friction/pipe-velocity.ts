import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { flowExpected, meanVelocity, type MovingFluid, fluidExpected } from './flow-in-pipe.js'

interface Bore {
  /** m3/s */
  readonly flow: number
  /** m */
  readonly insideDiameter: number
}

/**
 * Mean velocity in a pipe. Common practice keeps it between 0.6 and 1.2 m/s, 2 to 4 ft/s, indoors.
 *
 * @returns m/s
 *
 * @example
 * pipeVelocity({ flow: 0.000504, insideDiameter: 0.0268 }) // value 0.893, 8 gpm in 1 in. type M
 */
export function pipeVelocity({ flow, insideDiameter }: Bore): Sizing {
  const why = firstImpossible(flowExpected(flow), ['inside diameter of the pipe', insideDiameter, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const value = meanVelocity(flow, insideDiameter)
  return sized({
    value,
    working: [
      { name: 'flow', value: flow, unit: 'm3/s' },
      { name: 'open area of the pipe', value: (Math.PI / 4) * insideDiameter ** 2, unit: 'm2' },
      { name: 'velocity', value, unit: 'm/s' },
    ],
    assumed: [],
    valid: true,
  })
}

/**
 * Reynolds number of a flow in a pipe: laminar below 2,000, turbulent above 4,000.
 *
 * @returns 1
 *
 * @example
 * reynoldsNumber({ flow: 0.0000839, insideDiameter: 0.0268, density: 983.2, viscosity: 0.000466 }) // value 8414
 */
export function reynoldsNumber({ flow, insideDiameter, ...fluid }: Bore & MovingFluid): Sizing {
  const velocity = pipeVelocity({ flow, insideDiameter })
  if (!velocity.sized) return velocity
  const why = firstImpossible(...fluidExpected(fluid))
  if (why !== undefined) return cannotSize(why)
  const value = (fluid.density * velocity.value * insideDiameter) / fluid.viscosity
  return sized({
    value,
    working: [
      ...velocity.working,
      { name: 'density', value: fluid.density, unit: 'kg/m3' },
      { name: 'viscosity', value: fluid.viscosity, unit: 'Pa s' },
      { name: 'Reynolds number', value, unit: '1' },
    ],
    assumed: [],
    valid: true,
  })
}
