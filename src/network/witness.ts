import type { PortGraph } from './port-graph.js'
import type { Station } from './walk.js'

/** A way as a person walks it: ports at its ends, components between, `unknown` where nobody knows. */
export function witnessOf(way: readonly Station[], graph: PortGraph): readonly string[] {
  const visits = visitsOf(way, graph)
  return visits.flatMap(({ component, ports }, index) => {
    if (component === undefined) return ['unknown']
    return index > 0 && index < visits.length - 1 ? [component] : endsOf(ports)
  })
}

interface Visit {
  /** Absent for the unlisted rest. */
  readonly component?: string
  readonly ports: string[]
}

/** Neighbors on a way that belong to one component, gathered. */
function visitsOf(way: readonly Station[], graph: PortGraph): readonly Visit[] {
  const visits: Visit[] = []
  for (const { name } of way) {
    const node = graph.node(name)
    const component = node?.component?.id
    const port = `${component ?? ''}.${node?.port ?? ''}`
    const last = visits.at(-1)
    if (last !== undefined && last.component === component) last.ports.push(port)
    else visits.push(component === undefined ? { ports: [] } : { component, ports: [port] })
  }
  return visits
}

function endsOf(ports: readonly string[]): readonly string[] {
  const ends = [ports[0], ports.at(-1)].filter((port) => port !== undefined)
  return [...new Set(ends)]
}
