import * as z from 'zod/mini'
import packed from './combustion-air.generated.json' with { type: 'json' }
import { writtenAmount } from './written-amount.js'

/** Figures of the fuel gas code for appliances that take their air from the room, each for a watt of heat input. */
export type CombustionAirFigure =
  | 'indoor-volume'
  | 'infiltration-volume-natural-draft'
  | 'infiltration-volume-fan-assisted'
  | 'opening-same-story'
  | 'openings-between-stories'
  | 'opening-outdoors-direct'
  | 'opening-outdoors-horizontal-duct'
  | 'opening-outdoors-single'
  | 'mechanical-supply'

/**
 * A figure of the fuel gas code for one watt of heat input.
 *
 * @returns m3/W for volumes (for the infiltration method at one air change an hour), m2/W for openings, m3/s W for
 * mechanical supply
 * @example
 * combustionAirFigure('indoor-volume') // 0.004831 m3/W, 50 ft3 for 1,000 Btu/h
 */
export function combustionAirFigure(figure: CombustionAirFigure): number {
  const row = rows.find((each) => each.figure === figure)
  const amount = row?.volume ?? row?.area ?? row?.volumeFlow
  if (row === undefined || amount === undefined) throw new Error(`The table of combustion air lacks ${figure}.`)
  return amount / row.heatRate
}

interface Row {
  readonly figure: CombustionAirFigure
  /** W, for which the amount is told. */
  readonly heatRate: number
  readonly volume?: number | undefined
  readonly area?: number | undefined
  readonly volumeFlow?: number | undefined
}

const rows: readonly Row[] = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        figure: z.enum([
          'indoor-volume',
          'infiltration-volume-natural-draft',
          'infiltration-volume-fan-assisted',
          'opening-same-story',
          'openings-between-stories',
          'opening-outdoors-direct',
          'opening-outdoors-horizontal-duct',
          'opening-outdoors-single',
          'mechanical-supply',
        ]),
        heatRate: writtenAmount('heatRate'),
        volume: z.optional(writtenAmount('volume')),
        area: z.optional(writtenAmount('area')),
        volumeFlow: z.optional(writtenAmount('volumeFlow')),
      }),
    ),
  }),
  packed,
).rows
