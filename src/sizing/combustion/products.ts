import type { Fuel } from '../../tables/index.js'

/** What one mole of gas burns to; mol. */
export interface Products {
  readonly carbonDioxide: number
  readonly oxygen: number
  readonly nitrogen: number
  readonly water: number
}

/** Moles of nitrogen that come with a mole of oxygen in dry air, by the convention of combustion tables. */
export const nitrogenWithOxygen = 3.76

/**
 * Products of complete burning in dry air.
 *
 * @param excessAir share of air beyond what the gas needs, 0.2 for 20 %
 */
export function productsOf(fuel: Fuel, excessAir: number): Products {
  const need = oxygenNeed(fuel)
  return {
    carbonDioxide: fuel.carbonDioxide + sumOver(fuel, ({ carbon }) => carbon),
    oxygen: need * excessAir,
    nitrogen: fuel.nitrogen + nitrogenWithOxygen * need * (1 + excessAir),
    water: sumOver(fuel, ({ hydrogen }) => hydrogen / 2),
  }
}

/** Moles of oxygen that one mole of gas needs. */
export function oxygenNeed(fuel: Fuel): number {
  return sumOver(fuel, ({ carbon, hydrogen }) => carbon + hydrogen / 4)
}

/** Moles of flue gas without its water. */
export function dryMoles({ carbonDioxide, oxygen, nitrogen }: Products): number {
  return carbonDioxide + oxygen + nitrogen
}

/** J for a mole of gas, with the water condensed, at 25 C. */
export function grossHeat(fuel: Fuel): number {
  return sumOver(fuel, ({ heat }) => heat)
}

/** J for a mole of gas, with the water left as vapor, at 25 C. */
export function netHeat(fuel: Fuel): number {
  return grossHeat(fuel) - productsOf(fuel, 0).water * heatOfCondensing
}

/** kg for a mole of gas. */
export function molarMassOf(fuel: Fuel): number {
  const hydrocarbons = sumOver(
    fuel,
    ({ carbon, hydrogen }) => carbon * molarMass.carbon + hydrogen * molarMass.hydrogen,
  )
  return hydrocarbons + fuel.nitrogen * molarMass.nitrogen + fuel.carbonDioxide * molarMass.carbonDioxide
}

/** J for a mole of water at 25 C. */
export const heatOfCondensing = 44010

/** kg/mol, from the standard atomic weights. */
export const molarMass = {
  carbon: 0.012011,
  hydrogen: 0.001008,
  oxygen: 0.031998,
  nitrogen: 0.028014,
  carbonDioxide: 0.044009,
  water: 0.018015,
  air: 0.028965,
} as const

function sumOver(fuel: Fuel, amount: (part: Fuel['parts'][number]) => number): number {
  return fuel.parts.reduce((sum, part) => sum + part.share * amount(part), 0)
}
