import type { Thing } from '../model/index.js'
import type { Barriers } from './barriers.js'
import { metOn, type FirstMet, type Met } from './first-met.js'
import { flowWalk, type Direction } from './flow-walk.js'
import type { Network } from './open-network.js'
import type { Start } from './start.js'
import { uniqueFacts } from './told.js'

/** Components that water comes by, nearest first: surely, or perhaps, and whether there may be more. */
export type AlongFlow = FirstMet

/** What the water may not pass on its way; nothing said means any way counts. */
export type Ways = Pick<Barriers, 'things'>

/**
 * Everything that the water of the circuit comes to from a port, with the flow; the component where it begins is left out.
 * Never throws.
 *
 * @example
 * const fed = downstreamOf(network, { component: 'HS', port: 'branch2' })
 */
export function downstreamOf(network: Network, from: Start, ways: Ways = {}): AlongFlow {
  return allAlong(network, from, 'downstream', ways)
}

/**
 * Everything that the water of the circuit has come by on its way to a port; the component of the port is left out. Never
 * throws.
 *
 * @example
 * const before = upstreamOf(network, { component: 'B1', port: 'return' })
 */
export function upstreamOf(network: Network, to: Start, ways: Ways = {}): AlongFlow {
  return allAlong(network, to, 'upstream', ways)
}

/** Two places in the flow; they may be two ports of one component. */
export interface Stretch {
  readonly from: Start
  readonly to: Start
}

/**
 * Everything that stands between two places in the flow: what water comes to from the first before it comes to the second's
 * component, and has come by on its way to the second since the first's. Each with a whole way from one to the other. Never
 * throws.
 *
 * @example
 * const heated = betweenInFlow(network, { from: { component: 'B1', port: 'supply' }, to: { component: 'B1', port: 'return' } })
 */
export function betweenInFlow(network: Network, { from, to }: Stretch, ways: Ways = {}): AlongFlow {
  const isEnd = (thing: Thing): boolean => thing.id === from.component || thing.id === to.component
  const isBetween = (thing: Thing): boolean => !isEnd(thing)
  const [ahead, behind] = [
    metOn(flowWalk(network, from, { ...ways, direction: 'downstream', endsAt: isEnd }), isBetween),
    metOn(flowWalk(network, to, { ...ways, direction: 'upstream', endsAt: isEnd }), isBetween),
  ]
  const sure = meeting(ahead.sure, behind.sure)
  const known = new Set(sure.map(({ thing }) => thing))
  const possible = meeting([...ahead.sure, ...ahead.possible], [...behind.sure, ...behind.possible])
  return {
    sure,
    possible: possible.filter(({ thing }) => !known.has(thing)),
    open: ahead.open || behind.open,
    missing: uniqueFacts([...ahead.missing, ...behind.missing]),
    visited: ahead.visited + behind.visited,
  }
}

/** What is on both lists, with the one way and the other put together. */
function meeting(ahead: readonly Met[], behind: readonly Met[]): readonly Met[] {
  const back = new Map(behind.map(({ thing, witness }) => [thing, witness]))
  return ahead.flatMap(({ thing, witness }) => {
    const rest = back.get(thing)
    return rest === undefined ? [] : [{ thing, witness: [...new Set([...witness, ...rest.toReversed()])] }]
  })
}

function allAlong(network: Network, from: Start, direction: Direction, ways: Ways): AlongFlow {
  const walked = flowWalk(network, from, { ...ways, direction, endsAt: () => false })
  return metOn(walked, (thing) => thing.id !== from.component)
}
