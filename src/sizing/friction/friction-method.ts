import { frictionFactor } from '../friction-factor.js'
import { churchill } from './churchill.js'

/**
 * How the friction factor is found: `colebrook` is 64/Re below 2,000, Colebrook and White above 4,000 and a straight line in
 * the Reynolds number between them; `churchill` is one formula for all of it.
 */
export type FrictionMethod = 'colebrook' | 'churchill'

/** Darcy friction factor by a method. */
export function factorBy(method: FrictionMethod, reynolds: number, relativeRoughness: number): number {
  switch (method) {
    case 'colebrook':
      return frictionFactor(reynolds, relativeRoughness)
    case 'churchill':
      return churchill(reynolds, relativeRoughness)
    default:
      return method satisfies never
  }
}

/** What a result took for granted about its friction. */
export function methodInWords(method: FrictionMethod, reynolds: number): string {
  if (method === 'churchill') return 'friction by Churchill 1977'
  if (reynolds <= 2000) return 'laminar flow, friction factor 64/Re'
  if (reynolds >= 4000) return 'turbulent flow, friction by Colebrook and White'
  return 'transitional flow, friction on a straight line from 64/2000 at Re 2,000 to Colebrook and White at Re 4,000'
}
