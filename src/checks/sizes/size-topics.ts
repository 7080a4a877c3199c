import type { Context } from '../../facts/index.js'
import { boilerSizes } from './boiler-sizes.js'
import { condensateSizes } from './condensate-sizes.js'
import { electricalSizes } from './electrical-sizes.js'
import { emitterSizes } from './emitter-sizes.js'
import { expansionSizes } from './expansion-sizes.js'
import { gasSizes } from './gas-sizes.js'
import { hydraulicSizes } from './hydraulic-sizes.js'
import { hotWaterSizes } from './hot-water-sizes.js'
import { loadSizes } from './load-sizes.js'
import { reliefSizes } from './relief-sizes.js'
import type { SizeLine } from './size-line.js'
import { ventSizes } from './vent-sizes.js'

/** What can be sized, in the order of the work. */
export const sizeTopics = Object.freeze([
  'load',
  'emitters',
  'boiler',
  'hydraulics',
  'hot-water',
  'expansion',
  'relief',
  'gas',
  'vent',
  'condensate',
  'electrical',
] as const)

/** A topic that can be sized by itself. */
export type SizeTopic = (typeof sizeTopics)[number]

/** Every line of one topic; a thing that lacks a number has a line that says which. */
export function sizesOf(topic: SizeTopic, context: Context): readonly SizeLine[] {
  switch (topic) {
    case 'load':
      return loadSizes(context)
    case 'emitters':
      return emitterSizes(context)
    case 'boiler':
      return boilerSizes(context)
    case 'hydraulics':
      return hydraulicSizes(context)
    case 'hot-water':
      return hotWaterSizes(context)
    case 'expansion':
      return expansionSizes(context)
    case 'relief':
      return reliefSizes(context)
    case 'gas':
      return gasSizes(context)
    case 'vent':
      return ventSizes(context)
    case 'condensate':
      return condensateSizes(context)
    case 'electrical':
      return electricalSizes(context)
    default:
      return neverTopic(topic)
  }
}

function neverTopic(topic: never): never {
  throw new TypeError(`no such topic: ${String(topic)}`)
}
