import type { GasTable, GasTableRow } from '../../tables/index.js'
import { countedIn } from './counted-in.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { foot } from './units.js'

interface TabledPipe {
  readonly table: GasTable
  /** Nominal inches; EHD for corrugated tubing. */
  readonly size: number
  /** m, from the meter to the outlet that the method asks about. */
  readonly length: number
}

/**
 * What pipe of a size carries by a published table: the row of the next longer length that has a figure.
 *
 * @returns m3/s at 60 F, or W where the table counts heat
 *
 * @example
 * tableCapacity({ table: gasTable('steel-natural-gas-half-inch'), size: 1, length: 18.9 }) // value 0.001864, 237 cfh at 70 ft
 */
export function tableCapacity({ table, size, length }: TabledPipe): Sizing {
  const why = firstImpossible(['length of the gas pipe', length, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const column = table.sizes.indexOf(size)
  if (column < 0) return cannotSize(`${table.published} has no size ${size}.`)
  const row = rowFor(table, column, length)
  if (row === undefined)
    return cannotSize(
      `${table.published} as it is kept has no figure for size ${size} at ${Math.round(length / foot)} ft.`,
    )
  return sized({
    value: row.carries,
    working: [
      { name: 'length', value: length, unit: 'm' },
      { name: 'row of the table', value: row.length, unit: 'm' },
      { name: 'what the size carries', value: row.carries, ...countedIn(table) },
    ],
    assumed: [`inlet ${table.inlet}`, ...(table.known === 'recalled' ? [`${table.published} as recalled`] : [])],
    valid: true,
  })
}

function rowFor({ rows }: GasTable, column: number, length: number): { length: number; carries: number } | undefined {
  return rows.filter((row) => reaches(row, length)).flatMap((row) => cellOf(row, column))[0]
}

/** Lengths in feet do not survive being added up in meters; a millionth is not worth the next row. */
function reaches(row: GasTableRow, length: number): boolean {
  return row.length >= length * (1 - 1e-6)
}

function cellOf({ length, carries }: GasTableRow, column: number): readonly { length: number; carries: number }[] {
  const cell = carries[column] ?? null
  return cell === null ? [] : [{ length, carries: cell }]
}
