import { unknown, word, type Answer, type Context } from '../facts/index.js'
import { indirectTank, potableExpansionTank } from '../model/index.js'
import { reachesWithout, type Barriers, type NetworkAnswer } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { isOfKind } from './of-kind.js'
import { blockedAt } from './blocked-at.js'

/**
 * Whether the tank's drinking water reaches a potable expansion tank, and whether something between them can be shut.
 *
 * An expansion tank behind a check valve or a reducing valve takes nothing up: such a way does not count, and where there is
 * no other the answer is `absent`.
 */
export const potableExpansion = defineCheck('potableExpansion', {
  of: indirectTank,
  answers: ['reachable', 'closable', 'absent'],
  answerable: true,
  judge,
})

function judge(context: Context): Answer {
  const free = wayToExpansion(context, { closing: true })
  if (free.truth === 1) return word('reachable', { witness: free.witness })
  const any = wayToExpansion(context, {})
  if (any.truth === -1) return word('absent', { witness: any.witness })
  if (free.truth === -1 && any.truth === 1) return word('closable', { witness: any.witness, ...blockedAt(free) })
  const deciding = free.truth === 0 ? free : any
  return unknown({ witness: deciding.witness, missing: deciding.missing })
}

function wayToExpansion({ subject, network, listed }: Context, barriers: Barriers): NetworkAnswer {
  const from = { component: subject.id, medium: 'potableCold' } as const
  const allListed = listed(potableExpansionTank).more === 0
  const search = { ...barriers, checking: true, restricting: true, crossing: true, allListed }
  return reachesWithout(network, from, isExpansionTank, search)
}

const isExpansionTank = isOfKind(potableExpansionTank)
