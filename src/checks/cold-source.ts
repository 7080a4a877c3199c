import { word, unknown, type Answer, type Context } from '../facts/index.js'
import { hotWaterSource, mixingValve, pressureReducer, type Thing } from '../model/index.js'
import { reachesWithout } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { isInFamily } from './of-kind.js'
import { blockedAt } from './blocked-at.js'

/**
 * Where the mixing valve takes its cold water: from the `tank-line`, the cold line of the tank with no pressure reducer between, or
 * from an `other-line`.
 *
 * Not judged: on which side of the check valve of the tank the branch stands.
 */
export const coldSource = defineCheck('coldSource', {
  of: mixingValve,
  answers: ['tank-line', 'other-line'],
  answerable: true,
  judge,
})

function judge({ subject, network, listed }: Context): Answer {
  const from = { component: subject.id, port: 'cold' }
  const allListed = listed(hotWaterSource).more === 0
  const way = reachesWithout(network, from, isColdInlet, { things: isNoColdLine, crossing: true, allListed })
  if (way.truth === 1) return word('tank-line', { witness: way.witness })
  if (way.truth === -1) return word('other-line', { witness: way.witness, ...blockedAt(way) })
  return unknown({ witness: way.witness, missing: way.missing })
}

function isColdInlet(thing: Thing, port: string): boolean {
  return port === 'cold' && isInFamily(thing, hotWaterSource)
}

/** What heats or mixes water leads to the hot side, and behind a reducer another pressure begins. */
function isNoColdLine({ kind }: Thing): boolean {
  return kind.name === pressureReducer.name || Object.values(kind.ports).includes('potableHot')
}
