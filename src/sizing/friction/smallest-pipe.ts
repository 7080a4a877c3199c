import { pipeRoughness, type PipeName, type PipeSize, pipeSizes, surfaceOf } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { flowExpected, flowInPipe, fluidExpected, type MovingFluid } from './flow-in-pipe.js'

interface PipeChoice extends MovingFluid {
  readonly pipe: PipeName
  /** m3/s */
  readonly flow: number
  /** Pa/m; common practice stops at 4 ft of head for 100 ft. */
  readonly greatestSlope: number
  /** m/s; common practice stops at 1.2 m/s indoors. */
  readonly greatestVelocity: number
}

/**
 * Smallest listed size of a pipe that carries a flow within a slope of pressure and a velocity.
 *
 * @returns nominal inches
 *
 * @example
 * // 8 gpm of water at 140 F in type M, within 4 ft for 100 ft and 4 ft/s: value 1
 * smallestPipe({ pipe: 'copper-M', flow: 0.000505, density: 983.2, viscosity: 0.000466, greatestSlope: 385.7, greatestVelocity: 1.2192 })
 */
export function smallestPipe(choice: PipeChoice): Sizing {
  const why = firstImpossible(
    flowExpected(choice.flow),
    ...fluidExpected(choice),
    ['greatest slope of pressure', choice.greatestSlope, 'above zero'],
    ['greatest velocity', choice.greatestVelocity, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const tried = pipeSizes(choice.pipe).map((size) => ({ size, ...perMeter(size, choice) }))
  const found = tried.find(({ loss, velocity }) => loss <= choice.greatestSlope && velocity <= choice.greatestVelocity)
  if (found === undefined)
    return cannotSize(`No listed size of ${choice.pipe} carries ${choice.flow} m3/s within the limits.`)
  return sized({
    value: found.size.size,
    working: [
      { name: 'inside diameter', value: found.size.inside, unit: 'm' },
      { name: 'velocity', value: found.velocity, unit: 'm/s' },
      { name: 'slope of pressure', value: found.loss, unit: 'Pa/m' },
      { name: 'nominal size', value: found.size.size, unit: 'nominal in' },
    ],
    assumed: ['new pipe'],
    valid: true,
  })
}

function perMeter(
  { pipe, inside }: PipeSize,
  choice: PipeChoice,
): { readonly loss: number; readonly velocity: number } {
  const meter = { insideDiameter: inside, length: 1, roughness: pipeRoughness(surfaceOf(pipe)).rough }
  return flowInPipe(choice.flow, meter, choice, 'colebrook')
}
