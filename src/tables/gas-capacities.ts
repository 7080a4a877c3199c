import * as z from 'zod/mini'
import { si } from '../units/index.js'
import packed from './gas-capacities.generated.json' with { type: 'json' }
import { writtenAmount } from './written-amount.js'

/** The tables that are kept, by pipe, gas, and drop or inlet pressure. */
export const gasTableNames = [
  'steel-natural-gas-half-inch',
  'steel-natural-gas-three-inches',
  'steel-natural-gas-six-inches',
  'steel-natural-gas-2-psi',
  'steel-natural-gas-3-psi',
  'copper-natural-gas-17-inches',
  'copper-natural-gas-2-psi',
  'copper-propane-half-inch',
  'csst-natural-gas-half-inch',
  'csst-propane-half-inch',
  'polyethylene-natural-gas-half-inch',
] as const

/** Published tables of what gas pipe carries, by pipe, gas and drop. */
export type GasTableName = (typeof gasTableNames)[number]

/** What pipe of each size carries at one length. */
export interface GasTableRow {
  /** m */
  readonly length: number
  /** In the order of the sizes: m3/s, or W where the table counts heat; null where the cell is not known. */
  readonly carries: readonly (number | null)[]
}

/** A published table of what gas pipe carries. */
export interface GasTable {
  readonly table: GasTableName
  /** Code, edition and number of the table. */
  readonly published: string
  /** Whether its figures were read in the code or are recalled. */
  readonly known: 'read' | 'recalled'
  readonly note?: string | undefined
  readonly gas: 'natural-gas' | 'propane'
  readonly pipe: 'steel' | 'copper' | 'csst' | 'polyethylene'
  /** Pressure at the inlet for which it holds, in words. */
  readonly inlet: string
  /** Pa, from the meter or regulator to the farthest outlet. */
  readonly drop: number
  /** Relative to air. */
  readonly specificGravity: number
  readonly counts: 'volumeFlow' | 'heatRate'
  /** Nominal inches; for corrugated tubing its EHD. */
  readonly sizes: readonly number[]
  /** m, the inside diameters for which the table was made, where it prints them. */
  readonly inside?: readonly number[] | undefined
  /** Shortest first. */
  readonly rows: readonly GasTableRow[]
}

/**
 * A published table of what gas pipe carries.
 *
 * @example
 * gasTable('steel-natural-gas-half-inch').published // '2018 IFGC Table 402.4(2)'
 */
export function gasTable(name: GasTableName): GasTable {
  const found = tables.find(({ table }) => table === name)
  if (found === undefined) throw new Error(`The tables of gas pipe lack ${name}.`)
  return found
}

const units = { cfh: si('volumeFlow', '1 cfh'), '1000 Btu/h': si('heatRate', '1 MBH') } as const
const inch = si('length', '1 in')
const nominal = writtenAmount('nominalSize')

const written = z.strictObject({
  table: z.enum(gasTableNames),
  published: z.string(),
  known: z.enum(['read', 'recalled']),
  note: z.optional(z.string()),
  gas: z.enum(['natural-gas', 'propane']),
  pipe: z.enum(['steel', 'copper', 'csst', 'polyethylene']),
  inlet: z.string(),
  drop: writtenAmount('pressure'),
  specificGravity: z.number().check(z.positive()),
  counts: z.enum(['cfh', '1000 Btu/h']),
  sizes: z.array(z.union([z.number(), nominal])),
  inside: z.optional(z.array(z.number().check(z.positive()))),
  rows: z.array(
    z.strictObject({
      length: writtenAmount('length'),
      carries: z.array(z.nullable(z.number().check(z.positive()))),
    }),
  ),
})

const tables: readonly GasTable[] = z
  .parse(z.strictObject({ source: z.string(), rows: z.array(written) }), packed)
  .rows.map(inSi)

function inSi({ counts, inside, rows, ...table }: z.infer<typeof written>): GasTable {
  const unit = units[counts]
  return {
    ...table,
    counts: counts === 'cfh' ? 'volumeFlow' : 'heatRate',
    ...(inside === undefined ? {} : { inside: inside.map((diameter) => diameter * inch) }),
    rows: rows.map(({ length, carries }) => ({
      length,
      carries: carries.map((cell) => (cell === null ? null : cell * unit)),
    })),
  }
}
