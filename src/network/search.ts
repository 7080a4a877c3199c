import type { Thing } from '../model/index.js'
import type { Barriers } from './barriers.js'
import type { PortNode } from './port-graph.js'
import type { Told } from './told.js'

/** Whether a port of a thing is what is looked for. Where it cannot be told, the answer is the fact that would tell. */
export type IsTarget = (thing: Thing, port: string) => Told

/** How to look for a target. */
export interface Search extends Barriers {
  /** Everything that could be a target is listed, so an open end leads to none but the listed ones. */
  readonly allListed?: boolean
}

/** Whether a port is what is looked for. The unlisted rest may hold it, unless all is listed. */
export function isTargetAt(node: PortNode, isTarget: IsTarget, { allListed }: Search): Told {
  if (node.component !== undefined) return isTarget(node.component, node.port)
  return allListed === true ? false : { subject: node.group, fact: 'count' }
}
