import type { Context } from '../facts/index.js'
import { reliefValve, type Thing } from '../model/index.js'
import { reachesWithout, type Barriers, type NetworkAnswer } from '../network/index.js'

/** Whether the heating water of a boiler comes to a relief valve without passing the barriers. */
export function wayToRelief({ subject, network, listed }: Context, barriers: Barriers): NetworkAnswer {
  const from = { component: subject.id, medium: 'heatingWater' } as const
  // Drinking water has relief valves of its own; they do nothing for the boiler.
  const search = { ...barriers, crossing: true, allListed: listed(reliefValve).more === 0 }
  return reachesWithout(network, from, isReliefInlet, search)
}

function isReliefInlet(thing: Thing, port: string): boolean {
  return thing.kind.name === reliefValve.name && port === 'inlet'
}
