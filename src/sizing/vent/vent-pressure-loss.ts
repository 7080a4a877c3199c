import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { frictionFactor } from '../friction-factor.js'

interface GasInPipe {
  /** m3/s, as {@link flueGasFlow} or {@link combustionAirFlow} gives it. */
  readonly flow: number
  /** kg/m3 */
  readonly density: number
  /** Pa s; of air at the same temperature it is close enough, 2e-5 at 60 C. */
  readonly viscosity: number
  /** m, inside. */
  readonly diameter: number
  /** m, straight pipe. */
  readonly length: number
  /** m; smooth plastic or stainless steel 1.5e-6. */
  readonly roughness: number
  /** Sum of the resistance coefficients of elbows, terminal and entry. */
  readonly resistance: number
}

/**
 * Pressure that one side of a vent takes: friction of the pipe and resistance of its fittings.
 *
 * @returns Pa
 *
 * @example
 * const flue = { flow: 0.01188, density: 1.019, viscosity: 1.95e-5 }
 * ventPressureLoss({ ...flue, diameter: 0.0779, length: 15, roughness: 1.5e-6, resistance: 3 }) // value 28.3
 */
export function ventPressureLoss({
  flow,
  density,
  viscosity,
  diameter,
  length,
  roughness,
  resistance,
}: GasInPipe): Sizing {
  const why = firstImpossible(
    ['flow', flow, 'zero or more'],
    ['density', density, 'above zero'],
    ['viscosity', viscosity, 'above zero'],
    ['diameter', diameter, 'above zero'],
    ['length of the pipe', length, 'zero or more'],
    ['roughness', roughness, 'zero or more'],
    ['resistance of the fittings', resistance, 'zero or more'],
  )
  if (why !== undefined) return cannotSize(why)
  const velocity = (4 * flow) / (Math.PI * diameter ** 2)
  const reynolds = (density * velocity * diameter) / viscosity
  const moving = (density * velocity ** 2) / 2
  const friction = moving === 0 ? 0 : frictionFactor(reynolds, roughness / diameter)
  const value = ((friction * length) / diameter + resistance) * moving
  return sized({
    value,
    working: [
      { name: 'velocity', value: velocity, unit: 'm/s' },
      { name: 'Reynolds number', value: reynolds, unit: '1' },
      { name: 'friction factor', value: friction, unit: '1' },
      { name: 'pressure of the moving gas', value: moving, unit: 'Pa' },
      { name: 'pressure loss', value, unit: 'Pa' },
    ],
    assumed: ['the same density all along the pipe'],
    valid: velocity <= 100,
  })
}
