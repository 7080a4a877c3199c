import { unknown, word, type Answer, type Context } from '../facts/index.js'
import { boiler, castIronBaseboard, castIronRadiator, dirtSeparator, type Thing } from '../model/index.js'
import { firstMet, type Told } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { isOfKind } from './of-kind.js'

/** Whether a dirt separator stands on every way from kept cast-iron emitters back to the boiler. */
export const dirtSeparated = defineCheck('dirtSeparated', {
  of: boiler,
  answers: ['yes', 'no'],
  answerable: true,
  judge,
})

function judge(context: Context): Answer {
  const { subject, network } = context
  const isTarget = (thing: Thing): Told => isSeparator(thing) || isOldIron(context, thing)
  const met = firstMet(network, { component: subject.id, port: 'return' }, 'upstream', { isTarget })
  const bare = met.sure.find(({ thing }) => isIron(thing))
  if (bare !== undefined) {
    const because = 'it sheds rust, and no dirt separator stands between it and the boiler'
    return word('no', { witness: bare.witness.toReversed(), turningPoint: { at: bare.thing.id, because } })
  }
  const witness = met.sure[0]?.witness.toReversed() ?? []
  const isOpen = met.open || met.possible.some(({ thing }) => isIron(thing))
  return isOpen ? unknown({ witness, missing: met.missing }) : word('yes', { witness })
}

const isSeparator = isOfKind(dirtSeparator)
const isIron = isOfKind(castIronRadiator, castIronBaseboard)

function isOldIron({ ask }: Context, thing: Thing): Told {
  if (!isIron(thing)) return false
  const work = ask('work', thing)
  return work.state === 'word' ? work.word === 'kept' : { subject: thing.id, fact: 'work' }
}
