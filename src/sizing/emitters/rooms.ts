import { fallingRoot } from '../falling-root.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { emitterOutput } from './emitter-output.js'
import type { EmitterRating } from './emitter-rating.js'
import { requiredWater } from './required-water.js'

/** An emitter where it stands. */
export interface PlacedEmitter {
  readonly name: string
  readonly rating: EmitterRating
  /** K, air that enters it: the room for radiators, what lies on the floor for baseboard. */
  readonly air: number
  /** Part of the output that reaches the room: 1 in the open, less behind a cover. */
  readonly kept: number
}

/** A room with all its emitters. */
export interface HeatedRoom {
  readonly name: string
  /** W */
  readonly load: number
  readonly emitters: readonly PlacedEmitter[]
}

/**
 * Heat that all emitters of a room give together.
 *
 * @param water K, mean of supply and return
 * @returns W
 *
 * @example
 * roomOutput(dining, 333.15) // value 1493
 */
export function roomOutput({ name, emitters }: HeatedRoom, water: number): Sizing {
  const each = emitters.map((emitter) => ({
    name: emitter.name,
    output: emitterOutput({ rating: emitter.rating, excess: water - emitter.air, kept: emitter.kept }),
  }))
  const steps = each.map((one) => ({ name: one.name, value: one.output.sized ? one.output.value : 0, unit: 'W' }))
  for (const one of each) if (!one.output.sized) return cannotSize(`${name}, ${one.name}: ${one.output.why}`)
  const value = steps.reduce((sum, step) => sum + step.value, 0)
  return sized({
    value,
    working: [...steps, { name: `output in ${name}`, value, unit: 'W' }],
    assumed: [],
    valid: each.every(({ output }) => output.sized && output.valid),
  })
}

/**
 * Mean water temperature at which the emitters of a room carry its load: in closed form for one emitter, by halving for several.
 *
 * @returns K
 *
 * @example
 * roomWater(dining) // value 331.5
 */
export function roomWater(room: HeatedRoom): Sizing {
  const { name, load, emitters } = room
  const [only, ...others] = emitters
  if (only === undefined) return cannotSize(`${name} has no emitter.`)
  const alone = requiredWater({ ...only, load })
  if (others.length === 0) return alone.sized ? alone : cannotSize(`${name}, ${only.name}: ${alone.why}`)
  const why = firstImpossible([`load of ${name}`, load, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const hottest = roomOutput(room, highestWater)
  if (!hottest.sized) return hottest
  if (hottest.value < load) return cannotSize(`The emitters of ${name} cannot carry ${load} W with any water.`)
  const coolest = Math.min(...emitters.map(({ air }) => air))
  const value = fallingRoot((water) => load - outputAt(room, water), coolest, highestWater)
  const found = roomOutput(room, value)
  return sized({
    value,
    working: [...(found.sized ? found.working : []), { name: `mean water temperature of ${name}`, value, unit: 'K' }],
    assumed: [],
    valid: found.sized && found.valid,
  })
}

function outputAt(room: HeatedRoom, water: number): number {
  const output = roomOutput(room, water)
  return output.sized ? output.value : 0
}

/** K; no heating system comes near it. */
const highestWater = 600
