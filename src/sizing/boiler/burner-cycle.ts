import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/** A burner at its lowest fire on less load than that. */
export interface Cycling {
  /** W, lowest output of the boiler. */
  readonly lowestOutput: number
  /** W */
  readonly load: number
  /** m3 of water that is open to the boiler at that moment. */
  readonly volume: number
  /** J/m3 K, of the water or mixture. */
  readonly heatCapacity: number
  /** K between burner off and burner on. */
  readonly swing: number
}

/**
 * Time for which the burner runs at a stretch.
 *
 * @returns s; unlimited where the load takes the lowest fire or more
 *
 * @example
 * // 18,000 Btu/h on a load of 900, 10 gal, 10 F: 2.9 min
 * burnerOnTime({ lowestOutput: 5275, load: 264, volume: 0.03785, heatCapacity: 4.15e6, swing: 5.556 }) // value 174
 */
export function burnerOnTime(cycling: Cycling): Sizing {
  const why = whyNoCycle(cycling)
  if (why !== undefined) return cannotSize(why)
  const { lowestOutput, load } = cycling
  const [heat, surplus] = [heatOfSwing(cycling), lowestOutput - load]
  const value = surplus > 0 ? heat / surplus : Infinity
  return sized({
    value,
    working: [
      { name: 'heat of the swing', value: heat, unit: 'J' },
      { name: 'lowest fire above the load', value: surplus, unit: 'W' },
      { name: 'time on', value, unit: 's' },
    ],
    assumed: [...mixed],
    valid: true,
  })
}

/**
 * Time for which the burner then rests.
 *
 * @returns s; unlimited without a load
 *
 * @example
 * burnerOffTime({ lowestOutput: 5275, load: 264, volume: 0.03785, heatCapacity: 4.15e6, swing: 5.556 }) // value 3306
 */
export function burnerOffTime(cycling: Cycling): Sizing {
  const why = whyNoCycle(cycling)
  if (why !== undefined) return cannotSize(why)
  const { lowestOutput, load } = cycling
  const heat = heatOfSwing(cycling)
  const rests = lowestOutput > load
  const value = rests ? quotient(heat, load) : 0
  return sized({
    value,
    working: [
      { name: 'heat of the swing', value: heat, unit: 'J' },
      { name: 'load', value: load, unit: 'W' },
      { name: 'time off', value, unit: 's' },
    ],
    assumed: rests ? [...mixed] : ['the burner does not rest: the load takes the lowest fire'],
    valid: true,
  })
}

/**
 * Starts of the burner.
 *
 * @returns 1/s, times 3600 for starts an hour; 0 where it runs on or has nothing to do
 *
 * @example
 * // 100 Btu/F, 20 F, 40,000 Btu/h on a load of 10,000: 3.75 an hour
 * burnerStarts({ lowestOutput: 11723, load: 2931, volume: 1, heatCapacity: 189910, swing: 11.11 }) // value 0.00104
 */
export function burnerStarts(cycling: Cycling): Sizing {
  const [on, off] = [burnerOnTime(cycling), burnerOffTime(cycling)]
  if (!on.sized) return on
  if (!off.sized) return off
  const period = on.value + off.value
  const value = quotient(1, period)
  return sized({
    value,
    working: [
      { name: 'time on', value: on.value, unit: 's' },
      { name: 'time off', value: off.value, unit: 's' },
      { name: 'starts', value, unit: '1/s' },
    ],
    assumed: on.assumed,
    valid: true,
  })
}

/**
 * Most starts that any load can bring about: at half the lowest fire.
 *
 * @returns 1/s
 *
 * @example
 * mostBurnerStarts({ lowestOutput: 11723, volume: 1, heatCapacity: 189910, swing: 11.11 }) // value 0.00139, or 5 an hour
 */
export function mostBurnerStarts(cycling: Omit<Cycling, 'load'>): Sizing {
  return burnerStarts({ ...cycling, load: cycling.lowestOutput / 2 })
}

/**
 * Part of the time for which the burner runs: load over lowest fire, at most all of it.
 *
 * @example
 * burnerShare({ lowestOutput: 2081, load: 1072 }) // value 0.515
 */
export function burnerShare({ lowestOutput, load }: Pick<Cycling, 'lowestOutput' | 'load'>): Sizing {
  const why = firstImpossible(['lowest output', lowestOutput, 'above zero'], ['load', load, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const value = Math.min(1, load / lowestOutput)
  return sized({
    value,
    working: [
      { name: 'load over the lowest output', value: load / lowestOutput, unit: '1' },
      { name: 'part of the time', value, unit: '1' },
    ],
    assumed: [],
    valid: true,
  })
}

function whyNoCycle({ lowestOutput, load, volume, heatCapacity, swing }: Cycling): string | undefined {
  return firstImpossible(
    ['lowest output', lowestOutput, 'above zero'],
    ['load', load, 'zero or more'],
    ['volume of water', volume, 'above zero'],
    ['heat capacity of the water', heatCapacity, 'above zero'],
    ['swing', swing, 'above zero'],
  )
}

function heatOfSwing({ volume, heatCapacity, swing }: Cycling): number {
  return volume * heatCapacity * swing
}

/** Nothing divides to unlimited, and the unlimited divides to nothing. */
function quotient(over: number, under: number): number {
  return under === 0 ? Infinity : over / under
}

const mixed = ['the water counts as well mixed', 'metal left out'] as const
