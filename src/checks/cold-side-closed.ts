import { unknown, word, type Answer, type Context } from '../facts/index.js'
import { indirectTank, water, waterService, type Thing } from '../model/index.js'
import { reachesWithout } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { isOfKind } from './of-kind.js'
import { askOnce } from './ask-once.js'

/**
 * Whether heated water of the tank is kept from swelling back into the main: by a check at the meter, or by something on
 * every way from its cold inlet to the water service that checks or reduces.
 *
 * The trace stays on the cold side: it goes through nothing that heats or mixes water.
 */
export const coldSideClosed = defineCheck('coldSideClosed', {
  of: indirectTank,
  answers: ['yes', 'no'],
  answerable: true,
  judge,
})

function judge(context: Context): Answer {
  const { subject, network, listed } = context
  const meter = askOnce(context, water, 'meterCheck')
  if (meter.state === 'word' && meter.word === 'yes') return word('yes', { witness: ['check at the water meter'] })
  const services = listed(waterService)
  if (services.things.length === 0)
    return unknown({ missing: [...meter.missing, { subject: waterService.name, fact: 'count' }] })
  const back = reachesWithout(network, { component: subject.id, port: 'cold' }, isService, {
    checking: true,
    restricting: true,
    crossing: true,
    things: hasHotWater,
    allListed: services.more === 0,
  })
  if (back.truth === -1) return word('yes', { witness: back.witness })
  if (back.truth === 1 && meter.state === 'word') return word('no', { witness: back.witness })
  return unknown({ witness: back.witness, missing: [...meter.missing, ...back.missing] })
}

const isService = isOfKind(waterService)

function hasHotWater({ kind }: Thing): boolean {
  return Object.values(kind.ports).includes('potableHot')
}
