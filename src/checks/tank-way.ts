import { unknown, word, type Answer, type Context } from '../facts/index.js'
import { expansionTank, type Thing } from '../model/index.js'
import { reachesWithout, type Barriers, type NetworkAnswer, type Told } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { blockedAt } from './blocked-at.js'

/** Whether something between the expansion tank and the pipe that water runs through can be shut; `absent` when the tank hangs on no such pipe. */
export const tankWay = defineCheck('tankWay', {
  of: expansionTank,
  answers: ['open', 'closable', 'absent'],
  answerable: true,
  judge,
})

function judge(context: Context): Answer {
  const free = toFlow(context, { closing: true })
  if (free.truth === 1) return word('open', { witness: free.witness })
  const any = toFlow(context, {})
  if (any.truth === -1) return word('absent')
  if (free.truth === -1 && any.truth === 1) return word('closable', { witness: any.witness, ...blockedAt(free) })
  const deciding = free.truth === 0 ? free : any
  return unknown({ witness: deciding.witness, missing: deciding.missing })
}

function toFlow({ subject, network }: Context, barriers: Barriers): NetworkAnswer {
  const passes = (thing: Thing): Told => network.flow().passes(thing.id)
  return reachesWithout(network, { component: subject.id, port: 'system' }, passes, { ...barriers, crossing: true })
}
