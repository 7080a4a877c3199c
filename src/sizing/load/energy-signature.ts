import { firstImpossible } from '../first-impossible.js'
import type { Spread } from './spread.js'
import { type StraightFit, straightFit } from './straight-fit.js'
import { tQuantile } from './t-quantile.js'

/** A day, week or bill of the heating season. */
export interface HeatingPeriod {
  /** K outdoors on average. */
  readonly outdoor: number
  /** W of heat to the house on average: fuel without other uses, times the efficiency. */
  readonly load: number
}

/** How the heat of a house follows the weather. */
export interface EnergySignature {
  /** W/K */
  readonly conductance: number
  /** W/K, half width of the band that holds the conductance 95 times of 100; unknown with two periods. */
  readonly conductanceOff?: number
  /** K outdoors from which no heat is needed. */
  readonly balance: number
  /** r2: 1 where every period lies on the line; below about 0.8 something else drives the fuel. */
  readonly fit: number
  readonly line: StraightFit
}

/** A signature, or why the periods give none. */
export type Signature =
  { readonly fitted: true; readonly signature: EnergySignature } | { readonly fitted: false; readonly why: string }

/**
 * Conductance and balance temperature of a house from its fuel over periods of different cold, by least squares.
 *
 * @example
 * energySignature([{ outdoor: 268.15, load: 7500 }, { outdoor: 283.15, load: 3000 }]) // 300 W/K, balance 293.15 K
 */
export function energySignature(periods: readonly HeatingPeriod[]): Signature {
  const why = firstImpossible(
    ...periods.flatMap(({ outdoor, load }) => [
      ['outdoor temperature of a period', outdoor, 'above zero'] as const,
      ['load of a period', load, 'zero or more'] as const,
    ]),
  )
  if (why !== undefined) return { fitted: false, why }
  const line = straightFit(periods.map(({ outdoor, load }) => [outdoor, load] as const))
  if (line === undefined) return { fitted: false, why: 'A signature wants periods of different outdoor temperatures.' }
  if (line.slope >= 0) return { fitted: false, why: 'The fuel does not rise as it gets colder: no signature.' }
  const off =
    line.count > 2 ? { conductanceOff: (tQuantile(line.count - 2) * line.residual) / Math.sqrt(line.squares) } : {}
  return {
    fitted: true,
    signature: { conductance: -line.slope, ...off, balance: -line.intercept / line.slope, fit: line.fit, line },
  }
}

/**
 * Load at an outdoor temperature by a signature; the bounds hold the line 95 times of 100, and widen away from the weather that
 * was seen. Two periods leave the band unknown.
 *
 * @param outdoor K
 * @returns W
 */
export function signatureLoad({ line }: EnergySignature, outdoor: number): Spread {
  const likely = Math.max(0, line.intercept + line.slope * outdoor)
  if (line.count <= 2) return { low: 0, likely, high: Infinity }
  const error = line.residual * Math.sqrt(1 / line.count + (outdoor - line.meanX) ** 2 / line.squares)
  const off = tQuantile(line.count - 2) * error
  return { low: Math.max(0, likely - off), likely, high: likely + off }
}
