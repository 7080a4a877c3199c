import { runLoss, type FlowEdge } from '../../../sizing/index.js'
import type { SolvedState } from '../../hydraulics/index.js'

const gravity = 9.80665

/** Head, m, that the branch of a valve takes at a flow, m3/s: all that lies between it and the places where water parts. */
export function branchHead(flows: SolvedState, valve: string, flow: number): number | undefined {
  const parts = branchOf(flows, valve).flatMap((edge) => edge.parts)
  const loss = runLoss({ flow, density: flows.density, viscosity: flows.viscosity, parts })
  return loss.sized ? loss.value / (flows.density * gravity) : undefined
}

function branchOf({ edges, solution }: SolvedState, valve: string): readonly FlowEdge[] {
  const moving = edges.filter(({ name }) => (solution.edge(name)?.flow ?? 0) !== 0)
  const at = new Map<string, FlowEdge[]>()
  for (const edge of moving) for (const node of [edge.from, edge.to]) at.set(node, (at.get(node) ?? []).concat(edge))
  const branch = new Set(moving.filter(({ name }) => name.startsWith(`${valve} `)))
  for (const edge of branch) {
    for (const node of [edge.from, edge.to]) {
      const there = at.get(node) ?? []
      if (there.length === 2) there.forEach((each) => branch.add(each))
    }
  }
  return [...branch]
}
