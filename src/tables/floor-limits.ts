import * as z from 'zod/mini'
import packed from './floor-limits.generated.json' with { type: 'json' }
import { writtenAmount } from './written-amount.js'

/** Whose limits: the trade in the United States, or EN 1264. */
export type FloorLimitList = 'common-practice' | 'en-1264'

/** What a heated floor is or where it lies. */
export type FloorKind = 'occupied' | 'wood' | 'perimeter' | 'bathroom'

/**
 * Warmest surface that a list allows for a floor; nothing where the list does not name that floor.
 *
 * @returns K
 *
 * @example
 * floorLimit('wood', 'common-practice') // 299.8, or 80 F
 */
export function floorLimit(floor: FloorKind, list: FloorLimitList): number | undefined {
  return rows.find((row) => row.floor === floor && row.list === list)?.surface
}

const rows = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        list: z.enum(['common-practice', 'en-1264']),
        floor: z.enum(['occupied', 'wood', 'perimeter', 'bathroom']),
        surface: writtenAmount('temperature'),
      }),
    ),
  }),
  packed,
).rows
