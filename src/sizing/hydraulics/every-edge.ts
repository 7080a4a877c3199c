import type { EdgeLaw } from './edge-law.js'
import { endOf, type Series } from './series.js'
import type { Settled } from './settle-flows.js'

/** What a settled circuit comes to for each of its edges and nodes. */
export interface EveryEdge {
  /** Per edge, m3/s. */
  readonly flows: readonly number[]
  /** Per edge, m that its parts take, never negative. */
  readonly losses: readonly number[]
  /** Per edge, m from its beginning to its end; negative where a pump adds more. */
  readonly falls: readonly number[]
  /** Per node, m. */
  readonly heads: readonly number[]
}

/** Hands the flow of each way to its edges, and finds the heads between them from one to the next. */
export function everyEdge({ flows, heads }: Settled, ways: readonly Series[], laws: readonly EdgeLaw[]): EveryEdge {
  const each = { flows: zeros(laws), losses: zeros(laws), falls: zeros(laws), heads: [...heads] }
  for (const [index, way] of ways.entries()) passAlong(way, tidy(flows[index] ?? 0), laws, each)
  return each
}

type Filling = { readonly [K in keyof EveryEdge]: number[] }

function passAlong({ from, members }: Series, through: number, laws: readonly EdgeLaw[], each: Filling): void {
  let head = each.heads[from] ?? 0
  for (const [place, member] of members.entries()) {
    const sign = member.along ? 1 : -1
    const flow = sign * through
    const { loss, fall } = fallIn(laws[member.edge], flow)
    each.flows[member.edge] = flow
    each.losses[member.edge] = loss
    each.falls[member.edge] = fall
    head -= sign * fall
    // The node at the end has its head from the circuit.
    if (place < members.length - 1) each.heads[endOf(member, laws)] = head
  }
}

function fallIn(law: EdgeLaw | undefined, flow: number): { readonly loss: number; readonly fall: number } {
  const loss = law?.lossAt(Math.abs(flow)) ?? 0
  return { loss, fall: Math.sign(flow) * loss - (law?.pump?.headAt(flow) ?? 0) }
}

function zeros(laws: readonly EdgeLaw[]): number[] {
  return laws.map(() => 0)
}

/** What a closed check leaks in the calculation is nothing. */
function tidy(flow: number): number {
  return Math.abs(flow) < 2e-11 ? 0 : flow
}
