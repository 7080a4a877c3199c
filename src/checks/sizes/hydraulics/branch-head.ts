import { columnPressure, runLoss, type FlowEdge } from '../../../sizing/index.js'
import { passageOwner, type SolvedState } from '../../hydraulics/index.js'

/** The moving water of a state, ready to be followed from any valve. */
export interface Streams {
  readonly flows: SolvedState
  /** By the thing that they lead through, by the node that they leave, and by the one that they enter. */
  readonly through: ReadonlyMap<string, readonly Stream[]>
  readonly leaving: ReadonlyMap<string, readonly Stream[]>
  readonly entering: ReadonlyMap<string, readonly Stream[]>
}

/** Makes the moving water of a state ready, once for all its zones. */
export function streamsOf(flows: SolvedState): Streams {
  const moving = flows.edges.map((edge) => along(flows, edge)).filter(({ flow }) => flow > 0)
  return {
    flows,
    through: grouped(moving, ({ edge }) => passageOwner(edge)),
    leaving: grouped(moving, ({ from }) => from),
    entering: grouped(moving, ({ to }) => to),
  }
}

/**
 * Head, m, that the branch of a valve takes at a flow, m3/s, where it splits as it does in the state: from the place where water
 * parts for it to the place where it meets other water again.
 */
export function branchHead(
  { flows, through, leaving, entering }: Streams,
  valve: string,
  flow: number,
): number | undefined {
  const [middle] = through.get(valve) ?? []
  if (middle === undefined) return undefined
  const down = follow(middle, { ahead: leaving, behind: entering, end: ({ to }) => to })
  const up = follow(middle, { ahead: entering, behind: leaving, end: ({ from }) => from })
  const way = new Set([...up, ...down])
  const heads = [...way].map((each) => headOf(flows, each, flow * (each.flow / middle.flow)))
  return heads.reduce<number | undefined>(
    (sum, head) => (sum === undefined || head === undefined ? undefined : sum + head),
    0,
  )
}

/** An edge in the direction in which its water runs. */
interface Stream {
  readonly edge: FlowEdge
  readonly flow: number
  readonly from: string
  readonly to: string
}

function along({ solution }: SolvedState, edge: FlowEdge): Stream {
  const flow = solution.edge(edge.name)?.flow ?? 0
  return flow < 0 ? { edge, flow: -flow, from: edge.to, to: edge.from } : { edge, flow, from: edge.from, to: edge.to }
}

function grouped(
  streams: readonly Stream[],
  keyOf: (stream: Stream) => string,
): ReadonlyMap<string, readonly Stream[]> {
  const groups = new Map<string, Stream[]>()
  for (const stream of streams) {
    const group = groups.get(keyOf(stream))
    if (group === undefined) groups.set(keyOf(stream), [stream])
    else group.push(stream)
  }
  return groups
}

interface Direction {
  readonly ahead: ReadonlyMap<string, readonly Stream[]>
  readonly behind: ReadonlyMap<string, readonly Stream[]>
  readonly end: (stream: Stream) => string
}

/** One way on from the middle, over the places that no other water reaches. */
function follow(middle: Stream, { ahead, behind, end }: Direction): readonly Stream[] {
  const own = new Set([middle])
  const cameFrom = new Map<Stream, Stream>()
  let last = middle
  for (const stream of own) {
    const node = end(stream)
    const all = (behind.get(node) ?? []).every((each) => own.has(each))
    const onward = all ? (ahead.get(node) ?? []).filter((next) => !own.has(next)) : []
    for (const next of onward) {
      own.add(next)
      cameFrom.set(next, stream)
      last = next
    }
  }
  const way = [last]
  for (const stream of way) {
    const before = cameFrom.get(stream)
    if (before !== undefined) way.push(before)
  }
  return way
}

function headOf({ density, viscosity }: SolvedState, { edge }: Stream, flow: number): number | undefined {
  if (edge.parts.length === 0) return 0
  const loss = runLoss({ flow, density, viscosity, parts: edge.parts })
  return loss.sized ? loss.value / columnPressure({ height: 1, density }).value : undefined
}
