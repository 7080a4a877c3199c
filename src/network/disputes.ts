import type { Thing } from '../model/index.js'
import type { FlowDirections } from './flow-directions.js'
import { flowEnd } from './flow-end.js'
import type { PortGraph } from './port-graph.js'
import { pipeBetween, type WaterHubs } from './water-hubs.js'

/** Where what is drawn says opposite things of the water: it would have nowhere to go, or come from nowhere. */
export interface Disputes {
  /** The line that a passage from one port to another belongs to, if the water in it is disputed. */
  readonly lineAt: (from: string, to: string) => Thing | undefined
  /** Components whose ports say where water goes and cannot all be right. */
  readonly components: readonly string[]
}

/** Pipes with two beginnings, by line and by component. */
export function disputesIn(graph: PortGraph, water: WaterHubs, { beginnings }: FlowDirections): Disputes | undefined {
  const disputed = new Set([...beginnings].flatMap(([pipe, told]) => (told.size > 1 ? [pipe] : [])))
  if (disputed.size === 0) return undefined
  const ends = [...disputed].flatMap(({ from, to }) => [from, to])
  const speaking = ends.flatMap((end) => {
    const node = graph.node(end)
    return node?.component !== undefined && flowEnd(node.component, node.port) !== undefined ? [node.component.id] : []
  })
  return {
    components: [...new Set(speaking)],
    lineAt: (from, to) => {
      const pipe = pipeBetween(from, to, water)
      return pipe !== undefined && disputed.has(pipe) ? pipe.passage.owner : undefined
    },
  }
}
