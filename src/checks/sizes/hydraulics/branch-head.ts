import { columnPressure, runLoss, type FlowEdge } from '../../../sizing/index.js'
import type { SolvedState } from '../../hydraulics/index.js'

/**
 * Head, m, that the branch of a valve takes at a flow, m3/s, where it splits as it does in the state: from the place where water
 * parts for it to the place where it meets other water again.
 */
export function branchHead(flows: SolvedState, valve: string, flow: number): number | undefined {
  const moving = flows.edges.map((edge) => along(flows, edge)).filter((edge) => edge.flow > 0)
  const middle = moving.find(({ edge }) => edge.name.startsWith(`${valve} `))
  if (middle === undefined) return undefined
  const leaving = grouped(moving, ({ from }) => from)
  const entering = grouped(moving, ({ to }) => to)
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
  nodeOf: (stream: Stream) => string,
): ReadonlyMap<string, readonly Stream[]> {
  const groups = new Map<string, Stream[]>()
  for (const stream of streams) groups.set(nodeOf(stream), [...(groups.get(nodeOf(stream)) ?? []), stream])
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
