import { fact, known, unknown, type Answer, type Context } from '../../facts/index.js'
import {
  boiler,
  bufferTank,
  closelySpacedTees,
  hydraulicSeparator,
  installation as installationKind,
  quantity,
  type Thing,
} from '../../model/index.js'
import { separatorReturn } from '../../sizing/index.js'
import { askOnce } from '../ask-once.js'
import { hydraulicsOf } from './hydraulics-of.js'
import { countOfStates, whatIsMissing } from './over-states.js'
import { separatedFlows, systemReturn, type Sides } from './separated-flows.js'
import type { StateFlows } from './state-flows.js'

/**
 * Return that the boiler gets in the heating state of the greatest load: that of the emitters, warmed by supply that turns
 * back where the boiler circuit moves more water than the system behind a separator. Without one it is the design return.
 */
export const returnSeen = fact('returnSeen', { of: boiler, type: quantity('temperature'), read })

function read(context: Context): Answer {
  const lists = Object.keys(sides).map((kind) => ({ kind, ...context.listed(kind) }))
  const uncounted = lists.filter(({ more }) => more > 0).map(({ kind }) => ({ subject: kind, fact: 'count' }))
  if (uncounted.length > 0) return unknown({ missing: uncounted })
  const [mixer, second] = lists.flatMap(({ things }) => things)
  if (mixer === undefined) return askOnce(context, installationKind, 'designReturn')
  return second === undefined ? behind(context, mixer) : unknown()
}

/** Where the water of each side comes in or goes out, by kind: one port a side tells its flow. */
const sides: Readonly<Record<string, Sides>> = {
  [hydraulicSeparator.name]: { boiler: 'boilerSupply', system: 'systemSupply' },
  [closelySpacedTees.name]: { boiler: 'primaryIn', system: 'secondaryOut' },
  [bufferTank.name]: { boiler: 'hotIn', system: 'hotOut' },
}

function behind(context: Context, mixer: Thing): Answer {
  const { ask } = context
  const hydraulics = hydraulicsOf(context)
  const heating = hydraulics.states.map((flows) => ({
    flows,
    load: ask('load', flows.state),
    purpose: ask('purpose', flows.state),
  }))
  const missing = heating.flatMap(({ load, purpose }) => [...purpose.missing, ...load.missing])
  if (heating.some(({ load }) => load.state === 'number' && load.low !== load.high)) return unknown({ missing })
  if (hydraulics.more || heating.length === 0) return unknown({ missing: [...missing, countOfStates] })
  if (missing.length > 0) return unknown({ missing })
  const due = heating.flatMap(({ flows, load, purpose }) =>
    load.state === 'number' && purpose.state === 'word' && heats.includes(purpose.word)
      ? [{ flows, load: load.low }]
      : [],
  )
  const design = due.toSorted((one, other) => other.load - one.load)[0]
  return design === undefined ? unknown() : mixedIn(design.flows, design.load, { context, mixer })
}

const heats: readonly string[] = ['heating', 'both']

interface Mixing {
  readonly context: Context
  readonly mixer: Thing
}

function mixedIn(flows: StateFlows, load: number, { context, mixer }: Mixing): Answer {
  const supply = context.ask('supply', flows.state)
  if (!flows.solved) return unknown({ missing: whatIsMissing(flows) })
  if (supply.state !== 'number' || supply.low !== supply.high) return unknown({ missing: supply.missing })
  const side = sides[mixer.kind.name]
  const separated = side && separatedFlows(flows, mixer.id, side)
  if (separated === undefined) return unknown({ missing: [{ subject: mixer.id, fact: 'lines' }] })
  const { heatPerVolume } = flows
  const boilerSupply = supply.low
  const back = systemReturn(separated, { boilerSupply, load, heatPerVolume })
  const mixed = separatorReturn({ ...separated, boilerSupply, systemReturn: back })
  return mixed.sized ? known(mixed.value, { assumed: flows.assumed }) : unknown({ witness: [mixed.why] })
}
