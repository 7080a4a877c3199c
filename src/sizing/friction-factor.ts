/**
 * Darcy friction factor of a round pipe: 64/Re below a Reynolds number of 2,000, Colebrook and White above 4,000, between
 * them a straight line in the Reynolds number.
 *
 * @param reynolds above zero
 * @param relativeRoughness roughness over inside diameter, 0 to 0.05
 *
 * @example
 * frictionFactor(100_000, 0.0001) // 0.018514
 */
export function frictionFactor(reynolds: number, relativeRoughness: number): number {
  if (reynolds <= laminar) return 64 / reynolds
  if (reynolds >= turbulent) return colebrook(reynolds, relativeRoughness)
  const [low, high] = [64 / laminar, colebrook(turbulent, relativeRoughness)]
  return low + ((high - low) * (reynolds - laminar)) / (turbulent - laminar)
}

/** Newton on the inverse root of the factor; three steps from Swamee and Jain's formula settle every digit. */
function colebrook(reynolds: number, relativeRoughness: number): number {
  const rough = relativeRoughness / 3.7
  const slope = 2.51 / reynolds
  const step = (x: number): number => {
    const inside = rough + slope * x
    return x - (x + 2 * Math.log10(inside)) / (1 + ((2 / Math.LN10) * slope) / inside)
  }
  const first = -2 * Math.log10(rough + 5.74 / reynolds ** 0.9)
  return 1 / step(step(step(first))) ** 2
}

const laminar = 2000
const turbulent = 4000
