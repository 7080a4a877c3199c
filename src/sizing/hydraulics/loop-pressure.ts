import { firstImpossible } from '../first-impossible.js'
import { standardGravity } from '../friction/head.js'
import type { Step } from '../sized.js'

/** One thing along the way from the point of no pressure change, in the direction that the way goes. */
export interface LoopStep {
  /** The place behind it: `suction of C1`, `top of Z3`. */
  readonly name: string
  /** m by which the flow raises the head over it: a pump above zero, pipe in the direction of the flow below. */
  readonly headChange: number
  /** m by which the place lies higher than the point of no pressure change. */
  readonly elevation: number
}

/** Pressures along a way, or the sentence that says which number is impossible. */
export type LoopPressure =
  | {
      readonly sized: true
      /** Per step, Pa gauge. */
      readonly pressures: readonly number[]
      /** Pa gauge, the least of them and of the start. */
      readonly lowest: number
      readonly working: readonly Step[]
      readonly assumed: readonly string[]
    }
  | { readonly sized: false; readonly why: string }

interface Loop {
  /** Pa gauge, at the point of no pressure change: it stays, whether pumps run or not. */
  readonly pressure: number
  /** kg/m3 */
  readonly density: number
  readonly steps: readonly LoopStep[]
}

/**
 * Pressure along a loop, from the point where the expansion tank is joined: there the pressure stays as it is, and every pump,
 * loss and rise is reckoned from it.
 *
 * @returns Pa gauge
 *
 * @example
 * // 12 psi at a tank on the discharge of a pump that makes 7.48 ft: its suction has 8.7 psi
 * pressureAlongLoop({ pressure: 82_740, density: 1030, steps: [{ name: 'suction of C1', headChange: -2.28, elevation: 0 }] })
 */
export function pressureAlongLoop({ pressure, density, steps }: Loop): LoopPressure {
  const why = firstImpossible(
    ['pressure at the tank', pressure, 'any'],
    ['density', density, 'above zero'],
    ...steps.flatMap(({ name, headChange, elevation }) => [
      [`change of head up to ${name}`, headChange, 'any'] as const,
      [`elevation of ${name}`, elevation, 'any'] as const,
    ]),
  )
  if (why !== undefined) return { sized: false, why }
  const changes = steps.map((_, index) => steps.slice(0, index + 1).reduce((sum, step) => sum + step.headChange, 0))
  const pressures = steps.map(
    ({ elevation }, index) => pressure + density * standardGravity * ((changes[index] ?? 0) - elevation),
  )
  return {
    sized: true,
    pressures,
    lowest: Math.min(pressure, ...pressures),
    working: [
      { name: 'pressure at the tank', value: pressure, unit: 'Pa' },
      { name: 'density', value: density, unit: 'kg/m3' },
      ...steps.map(({ name }, index) => ({ name: `pressure at ${name}`, value: pressures[index] ?? 0, unit: 'Pa' })),
    ],
    assumed: ['standard gravity, 9.80665 m/s2', 'the tank holds its pressure while pumps start and stop'],
  }
}
