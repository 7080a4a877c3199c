import * as z from 'zod/mini'
import packed from './fuels.generated.json' with { type: 'json' }

/** Gases for which compositions are kept; `natural-gas` is a common pipeline gas, the supplier's own analysis is better. */
export type FuelName = 'methane' | 'natural-gas' | 'propane'

/** One combustible part of a gas: a hydrocarbon. */
export interface FuelPart {
  /** Atoms in a molecule. */
  readonly carbon: number
  /** Atoms in a molecule. */
  readonly hydrogen: number
  /** mol in a mol of gas */
  readonly share: number
  /** J/mol, with the water condensed, at 25 C. */
  readonly heat: number
}

/** A gas that is burned. */
export interface Fuel {
  readonly parts: readonly FuelPart[]
  /** mol in a mol of gas */
  readonly nitrogen: number
  /** mol in a mol of gas */
  readonly carbonDioxide: number
}

/** What a flue gas analyzer has set for a gas. */
export interface AnalyzerSettings {
  /** Share of the dry flue gas without excess air. */
  readonly mostCarbonDioxide: number
  /** A2 of the formula for the flue loss; percent of the net heat, per K, with oxygen in percent. */
  readonly lossFactor: number
  /** B of the formula for the flue loss; percent of the net heat per K. */
  readonly lossConstant: number
}

interface FuelRow extends Fuel {
  readonly fuel: FuelName
  readonly analyzer?: AnalyzerSettings | undefined
}

/**
 * Composition and heat of a gas.
 *
 * Heats from ISO 6976, recalled.
 *
 * @example
 * fuelNamed('methane').parts[0]?.heat // 890580 J/mol
 */
export function fuelNamed(name: FuelName): Fuel {
  return rowOf(name)
}

/**
 * Settings of a flue gas analyzer; none for pure methane, which no analyzer offers.
 *
 * @example
 * analyzerSettings('propane').mostCarbonDioxide // 0.138
 */
export function analyzerSettings(name: Exclude<FuelName, 'methane'>): AnalyzerSettings {
  const { analyzer } = rowOf(name)
  if (analyzer === undefined) throw new Error(`The table of fuels has no analyzer settings for ${name}.`)
  return analyzer
}

function rowOf(name: FuelName): FuelRow {
  const row = rows.find(({ fuel }) => fuel === name)
  if (row === undefined) throw new Error(`The table of fuels lacks ${name}.`)
  return row
}

const share = z.number().check(z.minimum(0), z.maximum(1))
const atoms = z.int().check(z.positive())
const part = z.strictObject({ carbon: atoms, hydrogen: atoms, share, heat: z.number().check(z.positive()) })
const analyzer = z.strictObject({ mostCarbonDioxide: share, lossFactor: z.number(), lossConstant: z.number() })

const rows: readonly FuelRow[] = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        fuel: z.enum(['methane', 'natural-gas', 'propane']),
        parts: z.array(part),
        nitrogen: share,
        carbonDioxide: share,
        analyzer: z.optional(analyzer),
      }),
    ),
  }),
  packed,
).rows
