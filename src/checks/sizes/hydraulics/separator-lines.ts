import type { Context } from '../../../facts/index.js'
import { hydraulicSeparator, type Thing } from '../../../model/index.js'
import { separatorReturn, separatorSupply } from '../../../sizing/index.js'
import { separatedFlows, systemReturn, type SolvedState } from '../../hydraulics/index.js'
import { sizeLine, type SizeLine, type Taking } from '../size-line.js'

/** Temperatures that leave each hydraulic separator in the state: back to the boiler, and on to the system. */
export function separatorLines(context: Context, flows: SolvedState): readonly SizeLine[] {
  return context.listed(hydraulicSeparator).things.flatMap((one) => mixedLines(context, flows, one))
}

function mixedLines(context: Context, flows: SolvedState, { id }: Thing): readonly SizeLine[] {
  const separated = separatedFlows(flows, id, { boiler: 'boilerSupply', system: 'systemSupply' })
  if (separated === undefined) return []
  const inputs = (take: Taking): Parameters<typeof separatorReturn>[0] => {
    const boilerSupply = take.number(context.ask('supply', flows.state))
    const load = take.number(context.ask('load', flows.state))
    const { heatPerVolume } = flows
    return { ...separated, boilerSupply, systemReturn: systemReturn(separated, { boilerSupply, load, heatPerVolume }) }
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
