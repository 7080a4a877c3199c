import * as z from 'zod/mini'
import packed from './hot-water-profiles.generated.json' with { type: 'json' }

/** Sizes of a day's hot water by which European water heaters are tested; `M` is a couple, `XL` a large family. */
export type HotWaterProfileName = 'M' | 'L' | 'XL'

/** A tap opened once. */
export interface HeatDraw {
  /** s after midnight */
  readonly start: number
  /** J in the water */
  readonly heat: number
}

/** A day of hot water. */
export interface HotWaterProfile {
  /** J, as published. */
  readonly heat: number
  readonly draws: readonly HeatDraw[]
}

/**
 * A test day of hot water.
 *
 * EU 812/2013, Annex VII; the sums read, the draws recalled.
 *
 * @example
 * hotWaterProfile('M').heat // 21.042e6 J, 5.845 kWh
 */
export function hotWaterProfile(name: HotWaterProfileName): HotWaterProfile {
  const row = rows.find(({ profile }) => profile === name)
  if (row === undefined) throw new Error(`The table of hot water profiles lacks ${name}.`)
  return {
    heat: row.kilowattHours * kilowattHour,
    draws: row.draws.map(({ minute, kilowattHours }) => ({ start: minute * 60, heat: kilowattHours * kilowattHour })),
  }
}

const kilowattHour = 3.6e6

const rows = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        profile: z.enum(['M', 'L', 'XL']),
        kilowattHours: z.number(),
        draws: z.array(z.strictObject({ minute: z.int(), kilowattHours: z.number() })),
      }),
    ),
  }),
  packed,
).rows
