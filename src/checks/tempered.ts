import { unknown, word, type Answer, type Context } from '../facts/index.js'
import { fixture, fixtureOutlet, hotWaterSource, mixingValve, type Thing } from '../model/index.js'
import { reachesWithout, type NetworkAnswer } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { outletsOf } from './outlets-of.js'
import { isInFamily } from './of-kind.js'
import { endsAt } from './ends-at.js'

/**
 * Whether all hot water of the fixture passes a mixing valve between the source and its outlet.
 *
 * It is traced from each outlet that is drawn; yes only while no outlet of it is left out.
 */
export const tempered = defineCheck('tempered', { of: fixture, answers: ['yes', 'no'], answerable: true, judge })

function judge(context: Context): Answer {
  const outlets = outletsOf(context)
  const traces = outlets.sure.map((outlet) => untemperedWay(context, outlet))
  const round = traces.find(({ truth }) => truth === 1)
  if (round !== undefined)
    return word('no', endsAt(round.witness.toReversed(), 'hot water comes to it past no mixing valve'))
  const missing = [...traces.flatMap((trace) => trace.missing), ...outlets.missing]
  if (traces.length === 0 && missing.length === 0) return unknown({ missing: [anOutlet] })
  return missing.length > 0 ? unknown({ missing }) : word('yes', { witness: traces.flatMap(({ witness }) => witness) })
}

const anOutlet = { subject: fixtureOutlet.name, fact: 'count' } as const

/** The way goes back to where hot water leaves its source, not through the source. */
function untemperedWay({ network }: Context, outlet: Thing): NetworkAnswer {
  const things = (thing: Thing): boolean => thing.kind.name === mixingValve.name || isSource(thing)
  return reachesWithout(network, { component: outlet.id, port: 'hot' }, isHotOutlet, { things, crossing: true })
}

function isHotOutlet(thing: Thing, port: string): boolean {
  return port === 'hot' && isSource(thing)
}

function isSource(thing: Thing): boolean {
  return isInFamily(thing, hotWaterSource)
}
