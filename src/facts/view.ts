import type { Installation, Thing } from '../model/index.js'
import { openNetwork, type Network } from '../network/index.js'
import type { Answer } from './answer.js'
import { countInverse, type InverseCounts } from './inverse-counts.js'

/** One way of looking at the document: everything, or only what is stated, or only what is proved by a photo. */
export interface View {
  readonly installation: Installation
  /** A stricter look whose settled answers go before this one's, so that assumptions only fill gaps. */
  readonly stricter?: View
  /** The drawn lines, as a graph made when it is first asked for. */
  readonly network: () => Network
  /** Who refers to whom, counted when it is first asked for. */
  readonly inverse: () => InverseCounts
  readonly remembered: Map<Thing, Map<string, Answer>>
}

/** Opens a view; its network and indexes are made when first asked for. */
export function openView(installation: Installation, stricter?: View): View {
  return {
    installation,
    ...(stricter === undefined ? {} : { stricter }),
    network: once(() => openNetwork(installation)),
    inverse: once(() => countInverse(installation)),
    remembered: new Map(),
  }
}

function once<V>(make: () => V): () => V {
  let made: { readonly value: V } | undefined
  return () => {
    made ??= { value: make() }
    return made.value
  }
}
