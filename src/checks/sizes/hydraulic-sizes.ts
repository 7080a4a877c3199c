import type { Context } from '../../facts/index.js'
import { hydraulicsOf, type StateFlows } from '../hydraulics/index.js'
import { flowLines } from './hydraulics/flow-lines.js'
import { ghostLines } from './hydraulics/ghost-lines.js'
import { pressureLines } from './hydraulics/pressure-lines.js'
import { pumpLines } from './hydraulics/pump-lines.js'
import { separatorLines } from './hydraulics/separator-lines.js'
import { velocityLines } from './hydraulics/velocity-lines.js'
import { zoneLines } from './hydraulics/zone-lines.js'
import type { SizeLine } from './size-line.js'

/** Flows, pumps, velocities, balance and pressures of every declared state, from what is drawn; then what runs while no pump does. */
export function hydraulicSizes(context: Context): readonly SizeLine[] {
  const { states, more } = hydraulicsOf(context)
  const lines = states.flatMap((state) => linesOf(context, state))
  const undeclared: readonly SizeLine[] = more
    ? [{ name: 'flows of all states', state: 'open', missing: [{ subject: 'state', fact: 'count' }] }]
    : []
  return [...lines, ...undeclared, ...ghostLines(context)]
}

function linesOf(context: Context, flows: StateFlows): readonly SizeLine[] {
  const name = `flows while ${flows.name}`
  if (!flows.solved) {
    const { missing, why } = flows
    return [why === undefined ? { name, state: 'open', missing } : { name, state: 'impossible', why }]
  }
  return [flowLines, pumpLines, velocityLines, zoneLines, separatorLines, pressureLines].flatMap((tell) =>
    tell(context, flows),
  )
}
