import type { Thing } from '../model/index.js'
import { opposite, type NetworkAnswer, type Tri } from './network-answer.js'
import type { Network } from './open-network.js'
import { reachesWithout } from './reaches-without.js'
import type { IsTarget, Search } from './search.js'
import type { Start } from './start.js'
import { eitherTold, type Told } from './told.js'

/** Whether every way passes something, and whether there is a way at all. */
export interface EveryWayAnswer extends NetworkAnswer {
  /** Whether a target is reached at all. Where surely none is, every way passes whatever one likes: the truth is 1, the witness empty. */
  readonly reached: Tri
}

/** What every way should pass, and which ways count. */
export interface Passing extends Search {
  /** A component that is gone through, or a line. Where it cannot be told, the answer is the fact that would tell. */
  readonly passes: (thing: Thing) => Told
}

/**
 * Does every way from a port to a target pass something for which `passes` holds?
 *
 * Asked by taking those things out: yes if no target is reached any more. The witness of a yes is a way that passes, the
 * witness of a no is the way round. Never throws.
 *
 * @param from a port, or a component with the medium to start in
 * @param isTarget what the ways lead to
 * @param passing what they should pass; the rest says which ways count, for instance `crossing: true` for those within one
 * group of media
 *
 * @example
 * const isDrain = (thing: Thing) => thing.kind.name === 'drainReceptor'
 * const passes = (thing: Thing) => thing.kind.name === 'neutralizer'
 * const treated = everyWayPasses(network, { component: 'B1', port: 'condensate' }, isDrain, { passes })
 */
export function everyWayPasses(network: Network, from: Start, isTarget: IsTarget, passing: Passing): EveryWayAnswer {
  const { passes, ...search } = passing
  const barred = (thing: Thing): Told => eitherTold(passes(thing), search.things?.(thing) ?? false)
  const any = reachesWithout(network, from, isTarget, search)
  const round = reachesWithout(network, from, isTarget, { ...search, things: barred })
  const told = {
    truth: opposite(round.truth),
    reached: any.truth,
    missing: round.missing,
    visited: any.visited + round.visited,
  }
  if (round.truth !== -1) return { ...told, witness: round.witness }
  return { ...told, witness: any.truth === 1 ? any.witness : [] }
}
