import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import {
  flowExpected,
  flowInPipe,
  fluidExpected,
  inFrictionRange,
  type MovingFluid,
  pipeExpected,
  type StraightPipe,
} from './flow-in-pipe.js'
import { type FrictionMethod, methodInWords } from './friction-method.js'

/** A flow through one pipe. */
export interface PipeFlow extends StraightPipe, MovingFluid {
  /** m3/s */
  readonly flow: number
  /** Colebrook where nothing is said. */
  readonly method?: FrictionMethod
}

/**
 * Pressure that a flow loses along a pipe, by Darcy and Weisbach.
 *
 * @returns Pa
 *
 * @example
 * // 1.33 gpm of water at 140 F through 96 ft of 1 in. type M: value 385, or 0.131 ft
 * pipeLoss({ flow: 0.0000839, insideDiameter: 0.0268, length: 29.26, roughness: 1.5e-6, density: 983.2, viscosity: 0.000466 })
 */
export function pipeLoss({ flow, method = 'colebrook', ...pipe }: PipeFlow): Sizing {
  const why = firstImpossible(flowExpected(flow), ...pipeExpected(pipe), ...fluidExpected(pipe))
  if (why !== undefined) return cannotSize(why)
  const { velocity, reynolds, factor, moving, loss } = flowInPipe(flow, pipe, pipe, method)
  // Diameters and fluids that no pipe has end beyond the numbers of a computer.
  if (!Number.isFinite(loss)) return cannotSize('The flow cannot be worked out in a pipe so far from any real one.')
  return sized({
    value: loss,
    working: [
      { name: 'velocity', value: velocity, unit: 'm/s' },
      { name: 'Reynolds number', value: reynolds, unit: '1' },
      { name: 'roughness over diameter', value: pipe.roughness / pipe.insideDiameter, unit: '1' },
      { name: 'friction factor', value: factor, unit: '1' },
      { name: 'length over diameter', value: pipe.length / pipe.insideDiameter, unit: '1' },
      { name: 'pressure of the moving fluid', value: moving, unit: 'Pa' },
      { name: 'pressure loss', value: loss, unit: 'Pa' },
    ],
    assumed: [methodInWords(method, reynolds)],
    valid: inFrictionRange(pipe, reynolds),
  })
}
