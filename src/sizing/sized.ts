import type { ReadAs } from './read-as.js'

/** One line of a calculation as a person would write it down. */
export interface Step {
  /** What the number is: `density of water`, `2 elbow45`. */
  readonly name: string
  readonly value: number
  /** Always SI: `kg/m3`, `m`, `Pa`, `VA`, `1`. */
  readonly unit: string
  /** How people read it, where the unit alone does not tell. */
  readonly readAs?: ReadAs
}

/** A calculated number with all that stands behind it. */
export interface Sized {
  /** In SI. */
  readonly value: number
  /** The steps, in order; the last one is the value itself. */
  readonly working: readonly Step[]
  /** What was taken for granted. */
  readonly assumed: readonly string[]
  /** False when an input lies outside the range for which the method is published. */
  readonly valid: boolean
}
