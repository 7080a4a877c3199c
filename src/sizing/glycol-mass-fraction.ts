import type { Glycol } from './glycol.js'
import type { Sized } from './sized.js'

/**
 * Mass fraction of glycol in a mixture whose strength is told by volume, as installers and refractometers tell it.
 *
 * Straight lines between the published pairs, up to 60 % by mass; beyond, towards pure glycol, not valid.
 *
 * @param volumeFraction 0 to 1
 * @returns 0 to 1
 *
 * @example
 * glycolMassFraction('propylene-glycol', 0.294).value // 0.3
 */
export function glycolMassFraction(glycol: Glycol, volumeFraction: number): Sized {
  const pairs = published[glycol]
  const upper = pairs.findIndex(([volume]) => volume >= volumeFraction)
  const [from, to] = [pairs[upper - 1] ?? origin, pairs[upper] ?? pure]
  const share = to[0] === from[0] ? 0 : (volumeFraction - from[0]) / (to[0] - from[0])
  const value = from[1] + share * (to[1] - from[1])
  return {
    value,
    working: [{ name: 'mass fraction of glycol', value, unit: '1' }],
    assumed: [],
    valid: volumeFraction >= 0 && value <= 0.6,
  }
}

type Pair = readonly [volume: number, mass: number]

const origin: Pair = [0, 0]
const pure: Pair = [1, 1]

/**
 * Volume and mass fractions from ASHRAE Handbook Fundamentals 2001. Read: propylene 9.6 to 49.9, ethylene 18.1 and 37.5;
 * the others from memory.
 */
const published: Readonly<Record<Glycol, readonly Pair[]>> = {
  'propylene-glycol': [origin, [0.096, 0.1], [0.194, 0.2], [0.294, 0.3], [0.396, 0.4], [0.499, 0.5], [0.6, 0.6], pure],
  'ethylene-glycol': [origin, [0.089, 0.1], [0.181, 0.2], [0.277, 0.3], [0.375, 0.4], [0.476, 0.5], [0.578, 0.6], pure],
}
