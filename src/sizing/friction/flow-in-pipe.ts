import { type Expected } from '../first-impossible.js'
import { factorBy, type FrictionMethod } from './friction-method.js'

/** A fluid in motion, as {@link fluidDensity} and {@link fluidViscosity} give it. */
export interface MovingFluid {
  /** kg/m3 */
  readonly density: number
  /** Pa s, dynamic. */
  readonly viscosity: number
}

/** Pipe of one bore. */
export interface StraightPipe {
  /** m */
  readonly insideDiameter: number
  /** m, with what its fittings count for. */
  readonly length: number
  /** m, height; {@link pipeRoughness} lists it. */
  readonly roughness: number
}

/** What a flow does in a pipe. */
export interface FlowInPipe {
  /** m/s, mean. */
  readonly velocity: number
  readonly reynolds: number
  /** Darcy; zero where nothing flows. */
  readonly factor: number
  /** Pa, density times velocity squared over two. */
  readonly moving: number
  /** Pa */
  readonly loss: number
}

/** Works a flow in a pipe out, in bare numbers. */
export function flowInPipe(flow: number, pipe: StraightPipe, fluid: MovingFluid, method: FrictionMethod): FlowInPipe {
  const { insideDiameter, length, roughness } = pipe
  const velocity = meanVelocity(flow, insideDiameter)
  const reynolds = (fluid.density * velocity * insideDiameter) / fluid.viscosity
  const moving = movingPressure(velocity, fluid.density)
  if (reynolds < 1) {
    // Poiseuille's law: where the factor grows without bound, the loss does not.
    const loss = (32 * fluid.viscosity * length * velocity) / insideDiameter ** 2
    return { velocity, reynolds, factor: reynolds === 0 ? 0 : 64 / reynolds, moving, loss }
  }
  const factor = factorBy(method, reynolds, roughness / insideDiameter)
  return { velocity, reynolds, factor, moving, loss: ((factor * length) / insideDiameter) * moving }
}

/** m/s */
export function meanVelocity(flow: number, insideDiameter: number): number {
  return (4 * flow) / (Math.PI * insideDiameter ** 2)
}

/** Pa */
export function movingPressure(velocity: number, density: number): number {
  return (density * velocity ** 2) / 2
}

/** Whether the friction formulas are published for a pipe. */
export function inFrictionRange({ insideDiameter, roughness }: StraightPipe, reynolds: number): boolean {
  return roughness <= 0.05 * insideDiameter && reynolds <= 1e8
}

export function flowExpected(flow: number): Expected {
  return ['flow', flow, 'zero or more']
}

export function fluidExpected({ density, viscosity }: MovingFluid): readonly Expected[] {
  return [
    ['density', density, 'above zero'],
    ['viscosity', viscosity, 'above zero'],
  ]
}

export function pipeExpected({ insideDiameter, length, roughness }: StraightPipe): readonly Expected[] {
  return [
    ['inside diameter of the pipe', insideDiameter, 'above zero'],
    ['length of the pipe', length, 'zero or more'],
    ['roughness of the pipe', roughness, 'zero or more'],
  ]
}
