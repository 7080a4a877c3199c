import type { Context } from '../../../facts/index.js'
import { hydraulicSeparator, type Thing } from '../../../model/index.js'
import { separatorReturn, separatorSupply } from '../../../sizing/index.js'
import type { SolvedState } from '../../hydraulics/index.js'
import { sizeLine, type SizeLine, type Taking } from '../size-line.js'

/** Temperatures that leave each hydraulic separator in the state: back to the boiler, and on to the system. */
export function separatorLines(context: Context, flows: SolvedState): readonly SizeLine[] {
  return context.listed(hydraulicSeparator).things.flatMap((one) => mixedLines(context, flows, one))
}

function mixedLines(context: Context, flows: SolvedState, { id }: Thing): readonly SizeLine[] {
  const boilerFlow = flowAt(flows, id, 'boilerSupply')
  const systemFlow = flowAt(flows, id, 'systemSupply')
  if (boilerFlow === 0 || systemFlow === 0) return []
  const inputs = (take: Taking): Parameters<typeof separatorReturn>[0] => {
    const boilerSupply = take.number(context.ask('supply', flows.state))
    const load = take.number(context.ask('load', flows.state))
    const enters = boilerSupply - load / (flows.heatPerVolume * boilerFlow)
    // Heat balance: the boiler return is the system return mixed with what turns back.
    const systemReturn = systemFlow <= boilerFlow ? boilerSupply - load / (flows.heatPerVolume * systemFlow) : enters
    return { boilerFlow, systemFlow, boilerSupply, systemReturn }
  }
  return [
    sizeLine({ name: `return to the boiler while ${flows.name}`, of: id }, 'temperature', (take) =>
      separatorReturn(inputs(take)),
    ),
    sizeLine({ name: `supply to the system while ${flows.name}`, of: id }, 'temperature', (take) =>
      separatorSupply(inputs(take)),
    ),
  ]
}

/** m3/s that passes a port of the separator, in the line that joins it. */
function flowAt({ edges, solution }: SolvedState, id: string, port: string): number {
  const joined = edges.find(({ name, from, to }) => !name.startsWith(`${id} `) && [from, to].includes(`${id}.${port}`))
  return Math.abs(joined === undefined ? 0 : (solution.edge(joined.name)?.flow ?? 0))
}
