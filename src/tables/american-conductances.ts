import * as z from 'zod/mini'
import { si } from '../units/index.js'
import packed from './american-conductances.generated.json' with { type: 'json' }

/** Parts of North American houses. */
export type HousePart = 'single-glazing' | 'double-glazing' | 'frame-wall-insulated' | 'frame-wall-bare'

/** Range in which a conductance lies, W/m2 K. */
export interface ConductanceRange {
  readonly least: number
  readonly most: number
}

/**
 * Conductance of a part of which only its kind is known; recalled from a handbook.
 *
 * @example
 * partConductance('single-glazing').least // 5.678 W/m2 K, or 1 Btu/h ft2 F
 */
export function partConductance(part: HousePart): ConductanceRange {
  const row = rows.find((each) => each.part === part)
  if (row === undefined) throw new Error(`The table of conductances lacks ${part}.`)
  return { least: row.least * perFoot, most: row.most * perFoot }
}

/** W/m2 K in a Btu/h ft2 F. */
const perFoot = si('heatRate', '1 Btu/h') / (si('area', '1 ft2') * si('temperatureDifference', '1 F'))

const conductance = z.number().check(z.positive())

const rows = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        part: z.enum(['single-glazing', 'double-glazing', 'frame-wall-insulated', 'frame-wall-bare']),
        least: conductance,
        most: conductance,
      }),
    ),
  }),
  packed,
).rows
