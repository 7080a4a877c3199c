/**
 * Density of the standard normal distribution.
 *
 * @example
 * normalDensity(0) // 0.39894
 */
export function normalDensity(z: number): number {
  return Math.exp(-(z ** 2) / 2) / Math.sqrt(2 * Math.PI)
}

/**
 * Share of the standard normal distribution below a number of standard deviations.
 *
 * By the power series near the middle and the continued fraction in the tails (Abramowitz and Stegun 26.2.11 and 26.2.14).
 *
 * @example
 * normalShare(1.959964) // 0.975
 */
export function normalShare(z: number): number {
  if (z > 0) return 1 - normalShare(-z)
  return z > -3 ? 0.5 - seriesShare(-z) : tailShare(-z)
}

function seriesShare(z: number): number {
  const terms = { sum: z, last: z }
  for (let odd = 3; odd < 120; odd += 2) {
    terms.last *= z ** 2 / odd
    terms.sum += terms.last
  }
  return normalDensity(z) * terms.sum
}

function tailShare(z: number): number {
  const levels = Array.from({ length: 60 }, (_, index) => 60 - index)
  return normalDensity(z) / levels.reduce((below, level) => z + level / below, z)
}
