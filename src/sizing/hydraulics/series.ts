import type { RunPart } from '../friction/run-loss.js'
import { headLoss, type EdgeLaw } from './edge-law.js'
import type { FlowNetwork } from './flow-network.js'
import type { ReadyPump } from './pump.js'

/** Edges one after the other, between two nodes where a flow can part: one flow passes them all. */
export interface Series {
  /** Node numbers; one and the same where the whole circuit is one way round. */
  readonly from: number
  readonly to: number
  readonly members: readonly Member[]
  /** Whether it lets nothing flow back. Such an edge stands alone. */
  readonly checked: boolean
  /** m that it takes at a flow of either sign, and how that grows. */
  readonly tangentAt: (flow: number) => Tangent
  /** A flow to begin with, m3/s: the way its pump drives, and none where nothing takes any pressure. */
  readonly firstFlow: number
}

/** An edge by its number, and whether it is passed from its beginning to its end. */
export interface Member {
  readonly edge: number
  readonly along: boolean
}

export interface Tangent {
  /** m; negative where a pump adds more. */
  readonly fall: number
  /** m per m3/s; above zero, so that nothing is ever divided by nothing. */
  readonly steepness: number
}

/**
 * The ways between the nodes that matter: those where three edges meet, where a check valve stands, whose head is given. In a
 * drawn house most ports only hand the flow on.
 */
export function seriesOf(
  laws: readonly EdgeLaw[],
  fixed: ReadonlyMap<number, number>,
  network: FlowNetwork,
): readonly Series[] {
  const around = edgesAround(laws)
  const handsOn = (node: number): boolean => {
    const there = around.get(node) ?? []
    return there.length === 2 && !fixed.has(node) && there.every((edge) => laws[edge]?.edge.checked !== true)
  }
  const passed = new Set<number>()
  return [...laws.entries()].flatMap(([edge, { from, to }]) => {
    if (passed.has(edge) || (handsOn(from) && handsOn(to))) return []
    const along = !handsOn(from)
    const members = walk({ edge, along }, laws, (node) => (handsOn(node) ? around.get(node) : undefined))
    for (const member of members) passed.add(member.edge)
    return [joined(members, laws, network)]
  })
}

/** The node at which a member ends, as it is passed. */
export function endOf({ edge, along }: Member, laws: readonly EdgeLaw[]): number {
  const law = laws[edge]
  return (along ? law?.to : law?.from) ?? 0
}

function edgesAround(laws: readonly EdgeLaw[]): ReadonlyMap<number, readonly number[]> {
  const around = new Map<number, number[]>()
  for (const [edge, { from, to }] of laws.entries()) {
    for (const node of [from, to]) {
      const there = around.get(node) ?? []
      around.set(node, there)
      there.push(edge)
    }
  }
  return around
}

function walk(
  start: Member,
  laws: readonly EdgeLaw[],
  goesOn: (node: number) => readonly number[] | undefined,
): readonly Member[] {
  const members = [start]
  for (const member of members) {
    const node = endOf(member, laws)
    const next = goesOn(node)?.find((edge) => edge !== member.edge)
    if (next !== undefined) members.push({ edge: next, along: laws[next]?.from === node })
  }
  return members
}

function joined(members: readonly Member[], laws: readonly EdgeLaw[], network: FlowNetwork): Series {
  const passed = members.flatMap((member) => {
    const law = laws[member.edge]
    return law === undefined ? [] : [{ law, along: member.along }]
  })
  const parts = added(passed.flatMap(({ law }) => law.edge.parts))
  const pumps = passed.flatMap(({ law: { pump }, along }) => (pump === undefined ? [] : [{ pump, along }]))
  const [first, last] = [members[0], members[members.length - 1]]
  return {
    from: first === undefined ? 0 : endOf({ ...first, along: !first.along }, laws),
    to: last === undefined ? 0 : endOf(last, laws),
    members,
    checked: passed.some(({ law }) => law.edge.checked === true),
    tangentAt: tangent(headLoss(parts, network), pumps),
    firstFlow: parts.length === 0 ? 0 : pumps.some(({ along }) => !along) ? -usualFlow : usualFlow,
  }
}

/** Pipes of one bore counted as one: the friction of each bore is found once. */
function added(parts: readonly RunPart[]): readonly RunPart[] {
  const pipes = new Map<string, RunPart & { readonly part: 'pipe' }>()
  for (const part of parts) {
    if (part.part !== 'pipe') continue
    const bore = `${part.insideDiameter} ${part.roughness}`
    pipes.set(bore, { ...part, length: part.length + (pipes.get(bore)?.length ?? 0) })
  }
  return [...parts.filter(({ part }) => part !== 'pipe'), ...pipes.values()]
}

interface Turned {
  readonly pump: ReadyPump
  readonly along: boolean
}

function tangent(lossAt: (flow: number) => number, pumps: readonly Turned[]): Series['tangentAt'] {
  const givenAt = (flow: number): number =>
    pumps.reduce((sum, { pump, along }) => sum + (along ? pump.headAt(flow) : -pump.headAt(-flow)), 0)
  return (flow) => {
    const size = Math.abs(flow)
    const at = Math.max(size, smallFlow)
    const [loss, given] = [lossAt(at), givenAt(flow)]
    const ofLoss = (lossAt(at * (1 + nudge)) - loss) / (at * nudge)
    const ofPumps = pumps.length === 0 ? 0 : (given - givenAt(flow + at * nudge)) / (at * nudge)
    const taken = size === at ? loss : lossAt(size)
    return {
      fall: Math.sign(flow) * taken - given,
      steepness: Math.max(ofLoss, 0) + Math.max(ofPumps, 0) + leastSteepness,
    }
  }
}

/** m3/s; a gallon a minute. */
const usualFlow = 6e-5
const nudge = 1e-6
/** m3/s; below it a flow counts as none. */
const smallFlow = 1e-10
/** m per m3/s; a river would pass. */
const leastSteepness = 1e-3
