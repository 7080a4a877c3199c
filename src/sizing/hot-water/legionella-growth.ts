import { type LegionellaBehavior, legionellaBands } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/**
 * What Legionella does in water of a temperature.
 *
 * @param temperature K
 * @example
 * legionellaAt(310.15) // 'thrives'
 */
export function legionellaAt(temperature: number): LegionellaBehavior {
  return legionellaBands().findLast(({ from }) => from <= temperature + roundingNoise)?.behavior ?? 'rests'
}

/**
 * How far the coolest warm water of a house lies above the temperature at which growth stops; below zero it grows again.
 *
 * @param coolest K, such as the return of a circulation loop
 * @returns K
 *
 * @example
 * aboveRegrowth(321.15) // value -2, for 48 C
 */
export function aboveRegrowth(coolest: number): Sizing {
  const why = firstImpossible(['coolest warm water', coolest, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const stops = Math.min(...dying().map(({ from }) => from))
  return sized({
    value: coolest - stops,
    working: [
      { name: 'coolest warm water', value: coolest, unit: 'K' },
      { name: 'growth stops', value: stops, unit: 'K' },
      { name: 'above it', value: coolest - stops, unit: 'K' },
    ],
    assumed: [],
    valid: true,
  })
}

/**
 * Time in which hot water leaves a tenth of the bacteria alive: between the published times with its logarithm straight in
 * temperature; hotter than the last of them, its time, which is cautious.
 *
 * @param temperature K
 * @returns s
 *
 * @example
 * legionellaTenthTime(333.15) // value 120, at 60 C
 */
export function legionellaTenthTime(temperature: number): Sizing {
  const why = firstImpossible(['temperature of the water', temperature, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const below = dying().findLast(({ from }) => from <= temperature + roundingNoise)
  if (below === undefined) return cannotSize(`At ${temperature} K Legionella does not die.`)
  const above = dying().find(({ from }) => from > below.from)
  const share = above === undefined ? 0 : (temperature - below.from) / (above.from - below.from)
  const value = below.time * ((above?.time ?? below.time) / below.time) ** share
  return sized({
    value,
    working: [
      { name: 'water', value: temperature, unit: 'K' },
      { name: 'time at the published temperature below', value: below.time, unit: 's' },
      { name: 'time until a tenth is left', value, unit: 's' },
    ],
    assumed: above === undefined ? ['no faster than at the hottest published temperature'] : [],
    valid: true,
  })
}

function dying(): readonly { readonly from: number; readonly time: number }[] {
  return legionellaBands().flatMap(({ from, tenthLeftAfter }) =>
    tenthLeftAfter === undefined ? [] : [{ from, time: tenthLeftAfter }],
  )
}

/** K; 50 C stays 50 C after it was turned into kelvins. */
const roundingNoise = 1e-9
