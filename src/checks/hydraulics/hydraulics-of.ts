import type { Context } from '../../facts/index.js'
import { state as stateKind, type Thing } from '../../model/index.js'
import type { Network } from '../../network/index.js'
import { circulating } from './circulating.js'
import { heatingPassages, type HeatingPassage } from './heating-passages.js'
import { stateFlows, type StateFlows } from './state-flows.js'

/** The flows of a heating system in each of its declared states. */
export interface Hydraulics {
  readonly states: readonly StateFlows[]
  /** There may be states that are not declared. */
  readonly more: boolean
  /** Everything drawn of the heating water, and what of it water runs round in. */
  readonly passages: readonly HeatingPassage[]
  readonly circuits: readonly HeatingPassage[]
}

/**
 * Solves the flows of every declared state, once for one look at a document: the same question has the same answer.
 *
 * @example
 * hydraulicsOf(context).states[0] // { name: 'heating', solved: true, flowThrough: ..., working: ... }
 */
export function hydraulicsOf(context: Context): Hydraulics {
  const before = solved.get(context.network)
  if (before !== undefined) return before
  const found = solve(context)
  solved.set(context.network, found)
  return found
}

// One entry a look at a document, gone with it: nothing of one house is kept for the next.
const solved = new WeakMap<Network, Hydraulics>()

function solve(context: Context): Hydraulics {
  const { passages, openEnds } = heatingPassages(context.network)
  const circuits = circulating(passages)
  const drawn = { passages: circuits, openEnds }
  const { things, more } = context.listed(stateKind)
  const states = things.map((state: Thing) => stateFlows(state, drawn, context))
  return { states, more: more > 0, passages, circuits }
}
