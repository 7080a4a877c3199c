import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import type { EmitterRating } from './emitter-rating.js'

interface WarmEmitter {
  readonly rating: EmitterRating
  /** K by which the mean of the water lies above the air. */
  readonly excess: number
  /** Part of the output that reaches the room: 1 in the open, less behind a cover. */
  readonly kept: number
}

/**
 * Heat that an emitter gives: its rating by the power of the excess; nothing where the water is no warmer than the air.
 *
 * @returns W
 *
 * @example
 * emitterOutput({ rating: castIronRadiator(5.017), excess: 38.89, kept: 1 }) // value 1493, or 5,094 Btu/h
 */
export function emitterOutput({ rating, excess, kept }: WarmEmitter): Sizing {
  const why =
    whyNoRating(rating) ??
    firstImpossible(['excess of the water over the air', excess, 'any'], ['part of the output kept', kept, 'a share'])
  if (why !== undefined) return cannotSize(why)
  const ratio = Math.max(0, excess) / rating.excess
  const factor = ratio ** rating.exponent
  const value = rating.output * factor * kept
  return sized({
    value,
    working: [
      { name: 'rated output', value: rating.output, unit: 'W' },
      { name: 'excess over the rated excess', value: ratio, unit: '1' },
      { name: `that to the power of ${rating.exponent}`, value: factor, unit: '1' },
      { name: 'part of the output kept', value: kept, unit: '1' },
      { name: 'output', value, unit: 'W' },
    ],
    assumed: [],
    valid: excess >= 0 && ratio <= 2 && rating.exponent <= 1.6,
  })
}

/** Tells what is impossible about a rating. */
export function whyNoRating({ output, excess, exponent }: EmitterRating): string | undefined {
  const why = firstImpossible(
    ['rated output', output, 'zero or more'],
    ['rated excess of the water over the air', excess, 'above zero'],
    ['exponent of the emitter', exponent, 'above zero'],
  )
  if (why !== undefined || exponent >= 1) return why
  return `The exponent of the emitter cannot be ${exponent}: it is 1 or more.`
}
