import { fixtureHotWater, type HotWaterFixture } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface FixtureCount {
  readonly fixture: HotWaterFixture
  readonly count: number
}

/**
 * Largest hot water demand in an hour by the fixture method: each fixture's hour of use, and the part of them that is used
 * at once. For a private residence with water at 140 F.
 *
 * Handbooks of ASHRAE and ASPE, read in a partly garbled reprint: demand factor 0.30.
 *
 * @returns m3 in an hour
 *
 * @example
 * fixtureDemand([{ fixture: 'shower', count: 2 }]) // value 0.0681, 18 gal
 */
export function fixtureDemand(fixtures: readonly FixtureCount[]): Sizing {
  const why = firstImpossible(
    ...fixtures.map(({ fixture, count }) => [`count of ${fixture}`, count, 'zero or more'] as const),
  )
  if (why !== undefined) return cannotSize(why)
  const possible = fixtures.map(({ fixture, count }) => ({
    name: `${count} ${fixture}`,
    value: count * fixtureHotWater(fixture),
    unit: 'm3',
  }))
  const sum = possible.reduce((all, { value }) => all + value, 0)
  return sized({
    value: sum * demandFactor,
    working: [
      ...possible,
      { name: 'all at once', value: sum, unit: 'm3' },
      { name: 'part used at once', value: demandFactor, unit: '1' },
      { name: 'demand in an hour', value: sum * demandFactor, unit: 'm3' },
    ],
    assumed: ['a private residence', 'water at 140 F'],
    valid: true,
  })
}

/**
 * Storage that goes with a demand by the fixture method: storage factor 0.70 of it.
 *
 * @param demand m3 in an hour
 * @returns m3
 *
 * @example
 * fixtureStorage(0.0681) // value 0.0477, 12.6 gal
 */
export function fixtureStorage(demand: number): Sizing {
  const why = firstImpossible(['demand', demand, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  return sized({
    value: demand * storageFactor,
    working: [
      { name: 'demand in an hour', value: demand, unit: 'm3' },
      { name: 'storage factor', value: storageFactor, unit: '1' },
      { name: 'storage', value: demand * storageFactor, unit: 'm3' },
    ],
    assumed: ['a private residence'],
    valid: true,
  })
}

const demandFactor = 0.3
const storageFactor = 0.7
