/** Share of oxygen in dry air. */
export const oxygenInAir = 0.209

/** Highest share of carbon dioxide in the dry flue gas of natural gas, burned without excess air; published values spread from 0.118 to 0.12. */
const mostCarbonDioxide = 0.118

/**
 * A share of dry flue gas as it would be without the air that dilutes it.
 *
 * @param share any share of the dry sample, such as 42e-6
 * @param oxygen share of oxygen in the sample, below 0.209
 * @example
 * airFree(42e-6, 0.048) // 54.5e-6
 */
export function airFree(share: number, oxygen: number): number {
  return (share * oxygenInAir) / (oxygenInAir - oxygen)
}

/**
 * Share of carbon dioxide that goes with a share of oxygen in the dry flue gas of natural gas.
 *
 * @param oxygen share of oxygen in the sample, from 0 to 0.209
 * @example
 * carbonDioxideAt(0.048) // 0.0909
 */
export function carbonDioxideAt(oxygen: number): number {
  return (mostCarbonDioxide * (oxygenInAir - oxygen)) / oxygenInAir
}
