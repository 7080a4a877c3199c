import { airVent, expansionTank, type Thing } from '../model/index.js'
import { reachesWithout, type Told } from '../network/index.js'
import type { Context } from '../facts/index.js'
import { defineCheck } from '../rulebook/index.js'
import { yesOrNo } from './yes-or-no.js'

/** Whether an automatic air vent stands in the water that the expansion tank serves. */
export const automaticVents = defineCheck('automaticVents', {
  of: expansionTank,
  answers: ['yes', 'no'],
  answerable: true,
  judge: (context) => {
    const { subject, network, listed } = context
    const from = { component: subject.id, port: 'system' }
    const search = { crossing: true, allListed: listed(airVent).more === 0 }
    return yesOrNo(
      reachesWithout(network, from, (thing) => isAutomatic(context, thing), search),
      'the air of the tank leaves there',
    )
  },
})

function isAutomatic({ ask }: Context, thing: Thing): Told {
  if (thing.kind.name !== airVent.name) return false
  const type = ask('type', thing)
  return type.state === 'word' ? type.word === 'automatic' : { subject: thing.id, fact: 'type' }
}
