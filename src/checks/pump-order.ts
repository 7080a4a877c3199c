import { unknown, word, type Answer, type Context } from '../facts/index.js'
import {
  bufferTank,
  circulator,
  closelySpacedTees,
  emitter,
  expansionTank,
  heatExchanger,
  hydraulicSeparator,
  indirectTank,
  type Thing,
} from '../model/index.js'
import { firstMet, reachedThings, type Direction, type FirstMet, type Told } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { isInFamily, isOfKind } from './of-kind.js'

/**
 * How the pumps stand to the place where the expansion tank joins: the first with the flow pumps `away` from it, one that
 * is met against the flow pumps `towards` it; `neither` where none is met before the emitters.
 *
 * A pump that serves the boiler alone is passed by: its circuit hangs on the other by a piece without resistance.
 */
export const pumpOrder = defineCheck('pumpOrder', {
  of: expansionTank,
  answers: ['away', 'towards', 'neither'],
  answerable: true,
  judge,
})

function judge(context: Context): Answer {
  const { subject, network } = context
  const passes = (thing: Thing): Told => network.flow().passes(thing.id)
  const leg = reachedThings(network, { component: subject.id, port: 'system' }, { crossing: true, things: passes })
  const [joint, other] = leg.things.filter((thing) => passes(thing) === true)
  if (leg.open || joint === undefined || other !== undefined) return unknown({ missing: leg.missing })
  const behind = pumpsFrom(context, joint, 'upstream')
  const towards = behind.sure.find(({ thing }) => isPump(thing))
  if (towards !== undefined) {
    const turningPoint = { at: towards.thing.id, because: 'it pushes towards the place where the tank joins' }
    return word('towards', { witness: towards.witness.toReversed(), turningPoint })
  }
  if (mayMeetPump(behind)) return unknown({ missing: behind.missing })
  const ahead = pumpsFrom(context, joint, 'downstream')
  const away = ahead.sure.find(({ thing }) => isPump(thing))
  if (away !== undefined) return word('away', { witness: away.witness })
  return mayMeetPump(ahead) ? unknown({ missing: ahead.missing }) : word('neither')
}

function pumpsFrom({ network, ask }: Context, joint: Thing, direction: Direction): FirstMet {
  const isTarget = (thing: Thing): Told => {
    if (!isPump(thing)) return endsCircuit(thing)
    const serves = ask('serves', thing)
    return serves.state === 'word' ? serves.word !== 'boiler' : { subject: thing.id, fact: 'serves' }
  }
  return firstMet(network, { component: joint.id, medium: 'heatingWater' }, direction, { isTarget })
}

const isPump = isOfKind(circulator)
const isOtherCircuit = isOfKind(hydraulicSeparator, bufferTank, closelySpacedTees, heatExchanger, indirectTank)

function endsCircuit(thing: Thing): boolean {
  return isOtherCircuit(thing) || isInFamily(thing, emitter)
}

function mayMeetPump({ possible, open }: FirstMet): boolean {
  return open || possible.some(({ thing }) => isPump(thing))
}
