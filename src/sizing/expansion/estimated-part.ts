import { emitterContents, type EstimatedEmitter } from '../../tables/index.js'
import type { FilledPart } from './system-volume.js'

interface EstimatedEmitters {
  readonly name: string
  readonly emitter: EstimatedEmitter
  /** m2 of EDR for radiators, m for baseboard. */
  readonly size: number
}

/**
 * Water in old emitters of which no maker's figure is known, with the whole range of common practice.
 *
 * @example
 * estimatedPart({ name: 'radiators', emitter: 'cast-iron-radiator', size: 30.75 }).likely // 0.2005 m3, 53 gal in 331 ft2 EDR
 */
export function estimatedPart({ name, emitter, size }: EstimatedEmitters): FilledPart {
  const { least, likely, most } = emitterContents(emitter)
  return { name, least: least * size, likely: likely * size, most: most * size }
}
