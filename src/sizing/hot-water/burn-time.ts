import { type BurnList, type BurnTime, burnTimes } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface Bather {
  /** K at the skin. */
  readonly temperature: number
  /** Published list of times. */
  readonly list: BurnList
  /** Part of an adult's time; common practice a quarter for children. */
  readonly partOfAdult: number
}

/**
 * Time in which water burns skin, between the published times with its logarithm straight in temperature.
 *
 * Cooler than the list the longest time is told, hotter the shortest, and the result is not valid: in truth longer or shorter.
 *
 * @returns s
 *
 * @example
 * burnTime({ temperature: 322.04, list: 'second-degree', partOfAdult: 1 }) // value 480, at 120 F
 */
export function burnTime({ temperature, list, partOfAdult }: Bather): Sizing {
  const why = firstImpossible(
    ['temperature of the water', temperature, 'above zero'],
    ["part of an adult's time", partOfAdult, 'a share'],
  )
  if (why !== undefined) return cannotSize(why)
  const [adult, within] = timeAt(burnTimes(list), temperature)
  return sized({
    value: adult * partOfAdult,
    working: [
      { name: 'water at the skin', value: temperature, unit: 'K' },
      { name: 'time for an adult', value: adult, unit: 's' },
      { name: "part of an adult's time", value: partOfAdult, unit: '1' },
      { name: 'time to the burn', value: adult * partOfAdult, unit: 's' },
    ],
    assumed: ['still skin in full contact'],
    valid: within,
  })
}

function timeAt(times: readonly BurnTime[], temperature: number): readonly [time: number, within: boolean] {
  const [first, last] = [times[0], times.at(-1)]
  if (first === undefined || last === undefined) throw new Error('A list of burn times is empty.')
  if (temperature < first.temperature - roundingNoise) return [first.time, false]
  const above = times.find((each) => each.temperature >= temperature - roundingNoise)
  if (above === undefined) return [last.time, false]
  const below = times.findLast((each) => each.temperature < above.temperature) ?? above
  const span = above.temperature - below.temperature
  const share = span === 0 ? 0 : (above.temperature - temperature) / span
  return [above.time * (below.time / above.time) ** share, true]
}

/** K; 120 F stays 120 F after it was turned into kelvins. */
const roundingNoise = 1e-9
