import * as z from 'zod/mini'
import packed from './fixture-hot-water.generated.json' with { type: 'json' }
import { writtenAmount } from './written-amount.js'

/** Fixtures of a private residence for which an hour's hot water is published. */
export type HotWaterFixture = 'lavatory' | 'bathtub' | 'shower' | 'kitchen-sink' | 'dishwasher' | 'clothes-washer'

/**
 * Hot water at 140 F that a fixture of a private residence takes in an hour of use, by the fixture method.
 *
 * @returns m3
 * @example
 * fixtureHotWater('shower') // 0.11356, 30 gal
 */
export function fixtureHotWater(fixture: HotWaterFixture): number {
  const row = rows.find((each) => each.fixture === fixture)
  if (row === undefined) throw new Error(`The table of fixtures lacks ${fixture}.`)
  return row.volume
}

const rows: readonly { readonly fixture: HotWaterFixture; readonly volume: number }[] = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        fixture: z.enum(['lavatory', 'bathtub', 'shower', 'kitchen-sink', 'dishwasher', 'clothes-washer']),
        volume: writtenAmount('volume'),
      }),
    ),
  }),
  packed,
).rows
