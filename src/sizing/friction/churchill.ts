/**
 * Darcy friction factor by Churchill 1977: one formula for laminar, transitional and turbulent flow, with no bend in it.
 * Within about 0.3 % of Colebrook and White at a Reynolds number of 100,000, and a few percent near 4,000.
 *
 * @param reynolds above zero
 * @param relativeRoughness roughness over inside diameter, 0 to 0.05
 *
 * @example
 * churchill(10_000, 0.0001) // 0.031178
 */
export function churchill(reynolds: number, relativeRoughness: number): number {
  // Below this the powers overflow, and the flow is laminar anyway.
  if (reynolds < 1) return 64 / reynolds
  const smooth = (-2.457 * Math.log((7 / reynolds) ** 0.9 + 0.27 * relativeRoughness)) ** 16
  const transitional = (37_530 / reynolds) ** 16
  return 8 * ((8 / reynolds) ** 12 + (smooth + transitional) ** -1.5) ** (1 / 12)
}
