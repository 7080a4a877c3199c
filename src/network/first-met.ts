import type { Thing } from '../model/index.js'
import type { Barriers } from './barriers.js'
import { flowWalk, type Direction, type FlowWalk } from './flow-walk.js'
import type { Network } from './open-network.js'
import type { Start } from './start.js'
import { uniqueFacts, type MissingFact, type Told } from './told.js'
import { wayTo, type Walk } from './walk.js'
import { witnessOf } from './witness.js'

/** What to look for on the way, and which ways count. */
export interface Meeting extends Pick<Barriers, 'things'> {
  /** A way ends at the first such component. Where it cannot be told, the answer is the fact that would tell. */
  readonly isTarget: (thing: Thing) => Told
}

/** A component that is met, with the way to it. */
export interface Met {
  readonly thing: Thing
  readonly witness: readonly string[]
}

/** What is met first on each way from a port. */
export interface FirstMet {
  /** Met first on at least one way that is surely there and surely runs in that direction, nearest first. */
  readonly sure: readonly Met[]
  /** Met first perhaps, on ways whose direction or whose pieces are not known. */
  readonly possible: readonly Met[]
  /** Something that is not listed may be met too. */
  readonly open: boolean
  /** What would tell more; it may be empty where only a direction is not known, but names the lines in which two directions meet. */
  readonly missing: readonly MissingFact[]
  readonly visited: number
}

/**
 * Walks with the flow of the heating water, or against it, and gathers the first target on each way. Legs without flow are
 * not walked. The component where the walk begins is no target. Never throws.
 *
 * @example
 * const pumps = firstMet(network, { component: 'AS1', port: 'out' }, 'downstream', { isTarget: (thing) => thing.kind.name === 'circulator' })
 */
export function firstMet(network: Network, from: Start, direction: Direction, meeting: Meeting): FirstMet {
  const { things } = meeting
  const isTarget = (thing: Thing): Told => (thing.id === from.component ? false : meeting.isTarget(thing))
  const walked = flowWalk(network, from, { direction, endsAt: isTarget, ...(things === undefined ? {} : { things }) })
  const { border, visited } = walked
  const sure = metOn(walked, walked.sure, (thing) => isTarget(thing) === true)
  const known = new Set(sure.map(({ thing }) => thing.id))
  const possible = metOn(walked, walked.perhaps, (thing) => !known.has(thing.id) && isTarget(thing) !== false)
  const untold = possible.flatMap(({ thing }) => asFact(isTarget(thing)))
  const missing = uniqueFacts([...walked.missing, ...untold, ...border, ...walked.disputed])
  return { sure, possible, open: walked.missing.length > 0 || border.length > 0, missing, visited }
}

function metOn({ graph }: FlowWalk, walk: Walk, counts: (thing: Thing) => boolean): readonly Met[] {
  const met = new Map<string, Met>()
  for (const name of walk.reached.keys()) {
    const thing = graph.node(name)?.component
    if (thing === undefined || met.has(thing.id) || !counts(thing)) continue
    // Told when asked for: many things behind one long way would else cost the way each.
    met.set(thing.id, {
      thing,
      get witness() {
        return witnessOf(wayTo(name, walk), graph)
      },
    })
  }
  return [...met.values()]
}

function asFact(told: Told): readonly MissingFact[] {
  return typeof told === 'object' ? [told] : []
}
