import { passageOwner } from './passage-owner.js'
import type { SolvedState } from './over-states.js'

/** Ports of a thing that joins a boiler circuit and a system circuit: one a side tells its flow. */
export interface Sides {
  readonly boiler: string
  readonly system: string
}

/** m3/s on both sides of a separator. */
export interface SeparatedFlows {
  readonly boilerFlow: number
  readonly systemFlow: number
}

/** The flows on both sides of a separator; nothing where one of them is not drawn, or stands. */
export function separatedFlows(flows: SolvedState, id: string, { boiler, system }: Sides): SeparatedFlows | undefined {
  const [boilerFlow, systemFlow] = [flowAt(flows, id, boiler), flowAt(flows, id, system)]
  return boilerFlow === 0 || systemFlow === 0 ? undefined : { boilerFlow, systemFlow }
}

/**
 * Temperature, K, that comes back from the system, by the heat that is given off there: what the boiler sends out goes on
 * unmixed as long as the system moves no more than the boiler.
 */
export function systemReturn(
  { boilerFlow, systemFlow }: SeparatedFlows,
  {
    boilerSupply,
    load,
    heatPerVolume,
  }: { readonly boilerSupply: number; readonly load: number; readonly heatPerVolume: number },
): number {
  return boilerSupply - load / (heatPerVolume * Math.min(boilerFlow, systemFlow))
}

/** m3/s that passes a port, in the line that joins it. */
function flowAt({ edges, solution }: SolvedState, id: string, port: string): number {
  const node = `${id}.${port}`
  const joined = edges.find((edge) => passageOwner(edge) !== id && (edge.from === node || edge.to === node))
  return Math.abs(joined === undefined ? 0 : (solution.edge(joined.name)?.flow ?? 0))
}
