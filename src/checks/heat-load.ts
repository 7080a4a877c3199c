import { atLeastZero, fact, rebound, smallestOf, type Answer, type Context, type Missing } from '../facts/index.js'
import { boiler, installation, quantity, zone, type KindSpec } from '../model/index.js'
import { uncounted } from './uncounted.js'

/** Heat that all zones need together on the coldest design day. Zones that are not listed can only add. */
export const designLoad = fact('designLoad', {
  of: installation,
  type: quantity('heatRate'),
  read: (context) => total(context, zone, 'designLoad'),
})

/** What all boilers can give together. Boilers that are not listed can only add. */
export const boilerOutput = fact('boilerOutput', {
  of: installation,
  type: quantity('heatRate'),
  read: (context) => total(context, boiler, 'output'),
})

/** Heat that the zone with the least of it needs on the coldest design day. A zone that is not listed can only need less. */
export const smallestZoneLoad = fact('smallestZoneLoad', {
  of: installation,
  type: quantity('heatRate'),
  read: ({ ask, listed }) => {
    const { things, more } = listed(zone)
    const least = smallestOf(things.map((thing) => ask('designLoad', thing)))
    const { low, high } = atLeastZero(least)
    return open(more > 0 ? rebound([least], 0, high) : rebound([least], low, high), uncounted(zone, more))
  },
})

function total({ ask, listed }: Context, kind: KindSpec, field: string): Answer {
  const { things, more } = listed(kind)
  const loads = things.map((thing) => ask(field, thing))
  const bounds = loads.map(atLeastZero)
  const low = bounds.reduce((sum, one) => sum + one.low, 0)
  const high = more === 0 ? bounds.reduce((sum, one) => sum + one.high, 0) : Infinity
  return open(rebound(loads, low, high), uncounted(kind, more))
}

function open(answer: Answer, missing: readonly Missing[]): Answer {
  return missing.length === 0 ? answer : { ...answer, missing: [...answer.missing, ...missing] }
}
