import type { Sized } from '../sized.js'
import { transformerLoad } from '../transformer-load.js'

type Devices = Parameters<typeof transformerLoad>[0]

/** What a transformer delivers in one state. */
export interface StateLoad {
  readonly state: string
  readonly load: Sized
}

/**
 * What a transformer delivers in every state, and with all devices drawing at once: the bound where states are not told.
 *
 * @returns VA each; states in the order given, `everything at once` last
 *
 * @example
 * loadsByState({ steady: [], switched: [{ id: 'ZV1', power: 7.68 }], states: [{ name: 'heating', energized: [] }] })
 */
export function loadsByState({ steady, switched, states }: Devices): readonly StateLoad[] {
  const everything = { name: 'everything at once', energized: switched.map(({ id }) => id) }
  return [...states, everything].map((state) => ({
    state: state.name,
    load: transformerLoad({ steady, switched, states: [state] }),
  }))
}
