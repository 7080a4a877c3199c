import { type Expected, firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import {
  flowExpected,
  flowInPipe,
  fluidExpected,
  inFrictionRange,
  meanVelocity,
  type MovingFluid,
  movingPressure,
  pipeExpected,
  type StraightPipe,
} from './flow-in-pipe.js'
import { type FrictionMethod, methodInWords } from './friction-method.js'
import { standardGravity } from './head.js'
import { lossThroughValve } from './valve.js'

/** One thing that a flow passes. */
export type RunPart = { readonly name: string } & (
  | ({ readonly part: 'pipe' } & StraightPipe)
  /** Fittings by the sum of their resistance coefficients in a bore. */
  | { readonly part: 'fittings'; readonly resistance: number; readonly insideDiameter: number }
  /** A valve by its Kv. */
  | { readonly part: 'valve'; readonly kv: number }
  /** A boiler, a coil: it loses `loss` Pa at `flow` m3/s and the square law elsewhere. */
  | { readonly part: 'rated'; readonly loss: number; readonly flow: number }
  /** Anything whose head, in m of the fluid, is `coefficient` times the square of the flow in m3/s. */
  | { readonly part: 'square'; readonly coefficient: number }
)

/** Everything that one flow passes on its way, one after the other. */
export interface Run extends MovingFluid {
  readonly parts: readonly RunPart[]
  /** Colebrook where nothing is said. */
  readonly method?: FrictionMethod
}

/**
 * Pressure that a flow loses over all that it passes.
 *
 * @returns Pa
 *
 * @example
 * runLoss({ flow: 0.0000839, density: 983.2, viscosity: 0.000466, parts: [{ name: 'ZV2', part: 'valve', kv: 6.487 }] }) // value 213
 */
export function runLoss({ flow, ...run }: Run & { readonly flow: number }): Sizing {
  const why = firstImpossible(flowExpected(flow)) ?? impossibleRun(run)
  if (why !== undefined) return cannotSize(why)
  const terms = run.parts.map((part) => ({ name: part.name, value: lossOf(part, flow, run), unit: 'Pa' }))
  const value = terms.reduce((sum, term) => sum + term.value, 0)
  return sized({
    value,
    working: [...terms, { name: 'pressure loss', value, unit: 'Pa' }],
    assumed: [...new Set(run.parts.map((part) => assumption(part, flow, run)))],
    valid: run.parts.every((part) => part.part !== 'pipe' || inFrictionRange(part, reynoldsIn(part, flow, run))),
  })
}

/** Pa, in bare numbers. */
export function lossOf(part: RunPart, flow: number, fluid: Omit<Run, 'parts'>): number {
  switch (part.part) {
    case 'pipe':
      return flowInPipe(flow, part, fluid, fluid.method ?? 'colebrook').loss
    case 'fittings':
      return part.resistance * movingPressure(meanVelocity(flow, part.insideDiameter), fluid.density)
    case 'valve':
      return lossThroughValve(flow, part.kv, fluid.density)
    case 'rated':
      return part.loss * (flow / part.flow) ** 2
    case 'square':
      return part.coefficient * flow ** 2 * fluid.density * standardGravity
    default:
      return part satisfies never
  }
}

/** Why a run cannot be, or nothing. */
export function impossibleRun({ parts, ...fluid }: Run): string | undefined {
  if (parts.length === 0) return 'The run has no parts.'
  const wrong = parts.map((part) => ({ part, why: firstImpossible(...partExpected(part)) })).find(({ why }) => why)
  return wrong?.why === undefined ? firstImpossible(...fluidExpected(fluid)) : `${wrong.part.name}: ${wrong.why}`
}

function partExpected(part: RunPart): readonly Expected[] {
  switch (part.part) {
    case 'pipe':
      return pipeExpected(part)
    case 'fittings':
      return [
        ['resistance of the fittings', part.resistance, 'zero or more'],
        ['inside diameter of the pipe', part.insideDiameter, 'above zero'],
      ]
    case 'valve':
      return [['flow coefficient of the valve', part.kv, 'above zero']]
    case 'rated':
      return [
        ['rated loss', part.loss, 'zero or more'],
        ['flow of the rated loss', part.flow, 'above zero'],
      ]
    case 'square':
      return [['coefficient of the square law', part.coefficient, 'zero or more']]
    default:
      return part satisfies never
  }
}

function assumption(part: RunPart, flow: number, run: Run): string {
  switch (part.part) {
    case 'pipe':
      return methodInWords(run.method ?? 'colebrook', reynoldsIn(part, flow, run))
    case 'fittings':
      return 'resistance coefficients that do not change with the flow'
    case 'valve':
      return 'valves rated with water of 1000 kg/m3'
    case 'square':
      return 'coefficients of a square law that do not change with the flow'
    case 'rated':
      return 'rated losses grow with the square of the flow'
    default:
      return part satisfies never
  }
}

function reynoldsIn(pipe: StraightPipe, flow: number, { density, viscosity }: MovingFluid): number {
  return (density * meanVelocity(flow, pipe.insideDiameter) * pipe.insideDiameter) / viscosity
}
