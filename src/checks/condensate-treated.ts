import { unknown, word, type Answer, type Context } from '../facts/index.js'
import { boiler } from '../model/index.js'
import { defineCheck } from '../rulebook/index.js'
import { isDrain, isNeutralizer, untreatedWay } from './condensate-way.js'
import { yesOrNo } from './yes-or-no.js'
import { endsAt } from './ends-at.js'

/** Whether all condensate of the boiler passes a neutralizer on its way to any drain. Condensate that is led nowhere is not treated. */
export const condensateTreated = defineCheck('condensateTreated', {
  of: boiler,
  answers: ['yes', 'no'],
  answerable: true,
  judge,
})

function judge(context: Context): Answer {
  const round = untreatedWay(context, isDrain)
  if (round.truth === 1) return word('no', endsAt(round.witness, 'condensate comes to it past no neutralizer'))
  if (round.truth === 0) return unknown({ witness: round.witness, missing: round.missing })
  return yesOrNo(untreatedWay(context, isNeutralizer))
}
