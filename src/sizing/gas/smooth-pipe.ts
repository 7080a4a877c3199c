import type { GasFlow } from '../../tables/index.js'
import { type Expected, firstImpossible } from '../first-impossible.js'
import { cubicFootPerHour, foot, inch } from './units.js'

/** A gas pipe with a smooth bore; corrugated tubing has its own law. */
export interface SmoothPipe {
  /** m */
  readonly insideDiameter: number
  /** m, with what its fittings count for. */
  readonly length: number
}

/**
 * Both equations of the fuel gas code read D = Q ** 0.381 / (k (drop term / (Cr L)) ** 0.206) in inches, cfh and feet. What
 * they share: the drop term of a pipe at a flow.
 */
export function dropTerm(flow: number, { insideDiameter, length }: SmoothPipe, gas: GasFlow, k: number): number {
  const ratio = (flow / cubicFootPerHour) ** 0.381 / (k * (insideDiameter / inch))
  return gas.flowFactor * (length / foot) * ratio ** (1 / 0.206)
}

/** m3/s that a pipe carries at a drop term. */
export function flowAt(term: number, { insideDiameter, length }: SmoothPipe, gas: GasFlow, k: number): number {
  const slope = term / (gas.flowFactor * (length / foot))
  return (k * (insideDiameter / inch) * slope ** 0.206) ** (1 / 0.381) * cubicFootPerHour
}

/** m, the bore that a flow wants at a drop term. */
export function boreAt(flow: number, term: number, length: number, gas: GasFlow, k: number): number {
  const slope = term / (gas.flowFactor * (length / foot))
  return ((flow / cubicFootPerHour) ** 0.381 / (k * slope ** 0.206)) * inch
}

/** Tells what is impossible about a pipe. */
export function impossiblePipe({ insideDiameter, length }: SmoothPipe): string | undefined {
  return firstImpossible(['inside diameter of the gas pipe', insideDiameter, 'above zero'], lengthClaim(length))
}

export function lengthClaim(length: number): Expected {
  return ['length of the gas pipe', length, 'above zero']
}

export function flowClaim(flow: number): Expected {
  return ['gas flow', flow, 'zero or more']
}
