import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface Swelling {
  /** Share of the cold volume by which the fluid swells. */
  readonly swelling: number
  /** 1/K, by which the pipe grows in length; see {@link linearExpansion}. */
  readonly pipe: number
  /** K, from cold to hot. */
  readonly rise: number
}

/** How pipe grows in length, 1/K. ASHRAE handbook, 6.5 and 9.5 millionths for a degree Fahrenheit, recalled. */
export const linearExpansion = Object.freeze({ steel: 6.5e-6 * 1.8, copper: 9.5e-6 * 1.8 })

/**
 * Swelling of the fluid less the room that the pipe gains, for large systems; houses leave the pipe out, which is safe.
 *
 * @returns share of the cold volume
 *
 * @example
 * netExpansion({ swelling: 0.0468, pipe: linearExpansion.steel, rise: 100 }) // value 0.0433
 */
export function netExpansion({ swelling, pipe, rise }: Swelling): Sizing {
  const why = firstImpossible(
    ['swelling of the fluid', swelling, 'any'],
    ['growth of the pipe', pipe, 'zero or more'],
    ['rise of the temperature', rise, 'zero or more'],
  )
  if (why !== undefined) return cannotSize(why)
  const room = 3 * pipe * rise
  return sized({
    value: swelling - room,
    working: [
      { name: 'swelling of the fluid', value: swelling, unit: '1' },
      { name: 'room that the pipe gains', value: room, unit: '1' },
      { name: 'net swelling', value: swelling - room, unit: '1' },
    ],
    assumed: ['all of the fluid stands in the one kind of pipe, and the pipe is as hot as the fluid'],
    valid: room <= Math.max(swelling, 0),
  })
}
